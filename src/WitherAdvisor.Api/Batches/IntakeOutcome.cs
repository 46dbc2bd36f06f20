using WitherAdvisor.Fields;
using WitherAdvisor.Loft.Kept.Batches;

namespace WitherAdvisor.Api.Batches;

/// <summary>What became of a batch that was brought in.</summary>
internal abstract record IntakeOutcome
{
    /// <summary>It is kept, with its first advice.</summary>
    public sealed record Taken(StoredBatch Batch, IReadOnlyList<LotWarning> Warnings, StoredAdvice Advice) : IntakeOutcome;

    public sealed record UnknownSite : IntakeOutcome;

    public sealed record UnknownTrough : IntakeOutcome;

    /// <summary>It does not fit the trough.</summary>
    public sealed record Refused(IReadOnlyList<FieldError> Errors) : IntakeOutcome;
}
