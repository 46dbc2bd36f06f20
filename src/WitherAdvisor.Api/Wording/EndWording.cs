using WitherAdvisor.Loft.Kept.Batches;

namespace WitherAdvisor.Api.Wording;

/// <summary>How a batch ended, in words.</summary>
public static class EndWording
{
    /// <summary>Null while it runs.</summary>
    public static string? Sentence(StoredBatch batch, WallClock clock) => batch.Ended switch
    {
        null => null,
        BatchEnd.Unloaded when batch.UnloadedAt is { } at => $"Off the trough since {clock.DayAndClock(at)}.",
        BatchEnd.Unloaded => "Off the trough; nobody knows since when.",
        BatchEnd.Cancelled => $"Cancelled{At(batch, clock)}: {batch.EndReason}",
        BatchEnd.Mixed => $"Mixed into another batch{At(batch, clock)}: {batch.EndReason}",
        _ => throw new ArgumentOutOfRangeException(nameof(batch), batch.Ended, "No words for this end."),
    };

    private static string At(StoredBatch batch, WallClock clock) => batch.UnloadedAt is { } at ? $" {clock.DayAndClock(at)}" : "";
}
