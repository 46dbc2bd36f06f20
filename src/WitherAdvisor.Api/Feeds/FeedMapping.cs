using WitherAdvisor.Api.Feeds.Responses;
using WitherAdvisor.Api.Hosting;
using WitherAdvisor.Loft;
using WitherAdvisor.Loft.FeedRefresh;
using WitherAdvisor.WeatherFeeds;
using WitherAdvisor.Words;
using WitherAdvisor.Words.Feeds;

namespace WitherAdvisor.Api.Feeds;

/// <summary>Feeds and what came of asking them as answers. No address and no key is among it.</summary>
internal static class FeedMapping
{
    public static ConfiguredFeedResponse ToResponse(IWeatherFeed feed)
    {
        FeedHealth health = feed.Health;
        return new()
        {
            Name = feed.Name,
            Attribution = feed.Attribution,
            Breaker = health.Breaker,
            LastGoodAt = health.LastGoodAt?.InMilliseconds(),
            LastRefusedAt = health.LastErrorAt?.InMilliseconds(),
            LastRefusal = health.LastError is { } refused ? ToResponse(refused) : null,
            RetryAfter = health.RetryAfter?.InMilliseconds(),
        };
    }

    public static RefreshResponse ToResponse(RefreshOutcome outcome, FeedStateResponse kept) => new()
    {
        Status = outcome is RefreshOutcome.Taken ? RefreshStatus.Taken : RefreshStatus.Refused,
        Taken = outcome is RefreshOutcome.Taken taken ? ToResponse(taken) : null,
        Refusal = outcome is RefreshOutcome.Refused refused ? ToResponse(refused.Why) : null,
        Kept = kept,
    };

    private static TakenWeatherResponse ToResponse(RefreshOutcome.Taken taken) => new()
    {
        FetchedAt = taken.Provenance.FetchedAt.InMilliseconds(),
        AsOf = taken.Provenance.AsOf.InMilliseconds(),
        AnalysedHours = taken.AnalysedHours,
        ForecastHours = taken.ForecastHours,
        From = taken.From,
        To = taken.To,
        Notes = [.. taken.Notes.Select(note => new FeedNoteResponse { Code = note.Code, Text = FeedNoteWording.Sentence(Wordbook.English, note) })],
        Cell = new()
        {
            LatitudeDeg = taken.Provenance.CellLatitudeDeg,
            LongitudeDeg = taken.Provenance.CellLongitudeDeg,
            ElevationM = taken.Provenance.CellElevationM,
        },
    };

    private static FeedRefusalResponse ToResponse(FeedAnswer.Refused refused) =>
        new()
        {
            Reason = refused.Reason,
            Text = FeedFaultWording.Sentence(Wordbook.English, refused.Fault),
            RetryAfter = refused.RetryAfter?.InMilliseconds(),
        };
}
