using WitherAdvisor.Loft.Kept.Batches;
using WitherAdvisor.Store;
using WitherAdvisor.Words;
using WitherAdvisor.Words.Units;

namespace WitherAdvisor.Api.Pages.Closing;

/// <summary>How a batch ended, in words.</summary>
public static class EndWording
{
    /// <summary>Null while it runs.</summary>
    public static string? Sentence(Wordbook words, StoredBatch batch, WallClock clock) => (batch.Ended, batch.UnloadedAt) switch
    {
        (null, _) => null,
        ({ } end, { } at) => words.Say($"{Key(end)}.at", ("time", clock.DayAndClock(at)), ("reason", batch.EndReason ?? "")),
        ({ } end, null) => words.Say(Key(end), ("reason", batch.EndReason ?? "")),
    };

    private static string Key(BatchEnd end) => end switch
    {
        BatchEnd.Unloaded => "ended.unloaded",
        BatchEnd.Cancelled => "ended.cancelled",
        BatchEnd.Mixed => "ended.mixed",
        _ => throw new ArgumentOutOfRangeException(nameof(end), end, "No words for this end."),
    };
}
