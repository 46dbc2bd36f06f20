using WitherAdvisor.Api.Http;
using WitherAdvisor.Loft.Records;

namespace WitherAdvisor.Api.Advice;

/// <summary>A kept advice that cannot be opened, as a problem: never another advice in its place.</summary>
internal static class RecordProblems
{
    public static ProblemResult Of(OpenedRecord.Unreadable unreadable) => Problem.Unreadable(
        "unreadable-advice",
        "This advice cannot be read.",
        unreadable.Fault switch
        {
            RecordFault.UnknownFormat =>
                $"Advice '{unreadable.AdviceId}' is kept in format {unreadable.Format}, which a later release of this service wrote.",
            RecordFault.DamagedInputs => $"Advice '{unreadable.AdviceId}' is damaged: its inputs cannot be read.",
            _ => $"Advice '{unreadable.AdviceId}' is damaged: its answer cannot be read.",
        });
}
