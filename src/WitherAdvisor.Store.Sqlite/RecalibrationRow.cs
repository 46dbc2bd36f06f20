using WitherAdvisor.Loft.Kept.Coefficients;

namespace WitherAdvisor.Store.Sqlite;

/// <summary>A row of Recalibration, in the order selected.</summary>
internal sealed record RecalibrationRow(
    string Id, string SiteId, string ProposalName, string? ComparedWith, string Status, double Share, string? Step, string? Failure,
    long QueuedAtMs, long? StartedAtMs, long? EndedAtMs)
{
    public StoredRecalibration ToRecalibration() => new(
        Id, SiteId, ProposalName, DateTimeOffset.FromUnixTimeMilliseconds(QueuedAtMs), ComparedWith,
        StoredWord.Read<RecalibrationStatus>(Status)!.Value, Share, Step,
        Failure is null ? null : RecalibrationFailureJson.Read(Failure), Time(StartedAtMs), Time(EndedAtMs));

    private static DateTimeOffset? Time(long? ms) => ms is { } known ? DateTimeOffset.FromUnixTimeMilliseconds(known) : null;
}
