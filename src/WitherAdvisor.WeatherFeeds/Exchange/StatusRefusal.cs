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
    /// <param name="key">Ours, to be kept out of the text.</param>
    /// <param name="now">When it came.</param>
    public static Refused Of(HttpResponseMessage response, string? reason, string? key, DateTimeOffset now)
    {
        DateTimeOffset? byHeader = ComeAgain.ByHeader(response.Headers.RetryAfter, now);
        string words = reason is null ? "" : $": {FeedText.Clean(reason, key)}";
        int status = (int)response.StatusCode;
        return response.StatusCode switch
        {
            HttpStatusCode.BadRequest => new(RefusalReason.BadRequest, $"The feed refused what was asked{words}"),
            HttpStatusCode.Unauthorized or HttpStatusCode.Forbidden =>
                new(RefusalReason.KeyRefused, $"The feed wants another key (status {status}){words}"),
            HttpStatusCode.NotFound =>
                new(RefusalReason.NotFound, $"The feed has no such page (status 404); is its base address right?{words}"),
            HttpStatusCode.TooManyRequests => new(RefusalReason.TooManyRequests,
                $"The feed's limit of requests is used up{words}", byHeader ?? ComeAgain.ByWords(reason, now)),
            HttpStatusCode.RequestTimeout or (>= HttpStatusCode.InternalServerError and < (HttpStatusCode)600) =>
                new(RefusalReason.ServerFault, $"The feed failed (status {status}){words}", byHeader),
            >= HttpStatusCode.MultipleChoices and < HttpStatusCode.BadRequest => new(RefusalReason.Redirected,
                $"The feed points elsewhere ({Elsewhere(response, key)}); that is not followed, as only the operator chooses addresses."),
            _ => new(RefusalReason.UnexpectedStatus, $"The feed answered with status {status}{words}"),
        };
    }

    // Never the whole address: a key in its query would come back with it.
    private static string Elsewhere(HttpResponseMessage response, string? key) => response.Headers.Location switch
    {
        null => "nowhere",
        { IsAbsoluteUri: true } address => FeedText.Clean(address.Host, key),
        _ => "another path",
    };
}
