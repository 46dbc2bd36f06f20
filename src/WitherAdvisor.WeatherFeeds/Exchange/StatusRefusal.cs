using System.Net;
using WitherAdvisor.WeatherFeeds.Reading;
using static WitherAdvisor.WeatherFeeds.FeedAnswer;

namespace WitherAdvisor.WeatherFeeds.Exchange;

/// <summary>What an answer with another status than 200 means.</summary>
internal static class StatusRefusal
{
    /// <summary>By the status first, then by the feed's words.</summary>
    /// <param name="response">Status and headers.</param>
    /// <param name="reason">The feed's own words, not cleaned yet; null where it gave none.</param>
    /// <param name="key">Ours, to be kept out of what it said.</param>
    /// <param name="now">When it came.</param>
    public static Refused Of(HttpResponseMessage response, string? reason, string? key, DateTimeOffset now)
    {
        DateTimeOffset? byHeader = RetryAfterTime.ByHeader(response.Headers.RetryAfter, now);
        string? said = reason is null ? null : FeedText.Clean(reason, key);
        int status = (int)response.StatusCode;
        return response.StatusCode switch
        {
            HttpStatusCode.BadRequest => new(RefusalReason.BadRequest, new FeedFault.QuestionRefused(said)),
            HttpStatusCode.Unauthorized or HttpStatusCode.Forbidden =>
                new(RefusalReason.KeyRefused, new FeedFault.KeyRefused(status, said)),
            HttpStatusCode.NotFound =>
                new(RefusalReason.NotFound, new FeedFault.NoSuchPage(said)),
            HttpStatusCode.TooManyRequests => new(RefusalReason.TooManyRequests,
                new FeedFault.LimitUsedUp(said), byHeader ?? RetryAfterTime.ByWords(reason, now)),
            HttpStatusCode.RequestTimeout or (>= HttpStatusCode.InternalServerError and < (HttpStatusCode)600) =>
                new(RefusalReason.ServerFault, new FeedFault.FeedFailed(status, said), byHeader),
            >= HttpStatusCode.MultipleChoices and < HttpStatusCode.BadRequest => new(RefusalReason.Redirected,
                PointsElsewhere(response, key)),
            _ => new(RefusalReason.UnexpectedStatus, new FeedFault.OtherStatus(status, said)),
        };
    }

    // Never the whole address: a key in its query would come back with it.
    private static FeedFault.PointsElsewhere PointsElsewhere(HttpResponseMessage response, string? key) => response.Headers.Location switch
    {
        null => new(Elsewhere.Nowhere, null),
        { IsAbsoluteUri: true } address => new(Elsewhere.Host, FeedText.Clean(address.Host, key)),
        _ => new(Elsewhere.Path, null),
    };
}
