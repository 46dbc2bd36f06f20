namespace WitherAdvisor.Loft.Kept.Coefficients;

/// <summary>A recalibration as kept.</summary>
/// <param name="Id">Made by the service.</param>
/// <param name="ProposalName">What the set is called that it proposes.</param>
/// <param name="ComparedWith">The adopted set when it began; null for the defaults.</param>
/// <param name="Share">How far it is, 0 to 1.</param>
/// <param name="Step">snake_case name of what is being done; null before it began.</param>
/// <param name="Failure">Why it failed; null where it did not.</param>
public sealed record StoredRecalibration(
    string Id, string SiteId, string ProposalName, DateTimeOffset QueuedAt,
    string? ComparedWith = null, RecalibrationStatus Status = RecalibrationStatus.Queued, double Share = 0, string? Step = null,
    RecalibrationFailure? Failure = null,
    DateTimeOffset? StartedAt = null, DateTimeOffset? EndedAt = null)
{
    /// <summary>Whether it waits or runs.</summary>
    public bool IsOpen => Status is RecalibrationStatus.Queued or RecalibrationStatus.Running;
}
