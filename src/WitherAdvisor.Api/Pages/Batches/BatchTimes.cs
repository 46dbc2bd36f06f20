using WitherAdvisor.Api.Pages.Forms;
using WitherAdvisor.Api.Wording;
using WitherAdvisor.Loft.Intake;

namespace WitherAdvisor.Api.Pages.Batches;

/// <summary>The times of a batch as typed; null where one is missing or was refused already.</summary>
public sealed record BatchTimes(
    DateTimeOffset? PluckedFrom, DateTimeOffset? PluckedTo, DateTimeOffset? LoadedAt, DateTimeOffset? ReadyBy)
{
    /// <summary>Refuses what is out of order.</summary>
    public void Check(FormReader form, WallClock clock)
    {
        foreach (BatchFault fault in BatchRules.Times(PluckedFrom, PluckedTo, LoadedAt, ReadyBy))
        {
            Refuse(fault, form, clock);
        }
    }

    private static void Refuse(BatchFault fault, FormReader form, WallClock clock)
    {
        switch (fault)
        {
            case BatchFault.PluckingEndsBeforeItBegins plucking:
                Refuse(BatchForm.PluckedTo, "Plucked to", plucking.To, $"not before plucking began, {clock.DateAndClock(plucking.From)}");
                break;
            case BatchFault.LoadedBeforePlucked loaded:
                Refuse(BatchForm.LoadedAt, "Loaded at", loaded.LoadedAt, $"not before plucking ended, {clock.DateAndClock(loaded.PluckedTo)}");
                break;
            case BatchFault.PluckedTooLongAgo plucked:
                Refuse(BatchForm.PluckedFrom, "Plucked from", plucked.PluckedFrom,
                    $"at most {plucked.MostHours} h before loading, {clock.DateAndClock(plucked.LoadedAt)}");
                break;
            case BatchFault.WantedAtAnImpossibleTime wanted:
                Refuse(BatchForm.ReadyBy, "Wanted ready by", wanted.ReadyBy,
                    $"after loading, {clock.DateAndClock(wanted.LoadedAt)}, by at most {wanted.MostHours} h");
                break;
            default:
                throw new ArgumentOutOfRangeException(nameof(fault), fault, "No field for this fault.");
        }

        void Refuse(string field, string label, DateTimeOffset given, string allowed) =>
            form.Refuse(field, label, $"{clock.DateAndClock(given)} was given; {allowed}.");
    }
}
