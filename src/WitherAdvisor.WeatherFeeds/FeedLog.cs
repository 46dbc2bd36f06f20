using static WitherAdvisor.WeatherFeeds.FeedAnswer;

namespace WitherAdvisor.WeatherFeeds;

/// <summary>Remembers how a feed's last fetches ended.</summary>
internal sealed class FeedLog
{
    private readonly Lock gate = new();
    private DateTimeOffset? lastGoodAt;
    private DateTimeOffset? lastErrorAt;
    private Refused? lastError;
    private Refused? sentAway;

    public void Write(FeedAnswer answer, DateTimeOffset now)
    {
        lock (gate)
        {
            if (answer is Refused refused)
            {
                lastErrorAt = now;
                lastError = refused;
                sentAway = refused.RetryAfter is null ? sentAway : refused;
            }
            else
            {
                lastGoodAt = now;
            }
        }
    }

    /// <summary>The refusal that holds until the feed may be asked again; null where it may be asked now.</summary>
    public Refused? Standing(DateTimeOffset now)
    {
        lock (gate)
        {
            return sentAway?.RetryAfter > now ? sentAway : null;
        }
    }

    public FeedHealth Health(string feedName, FeedBreaker breaker, DateTimeOffset now)
    {
        lock (gate)
        {
            return new(feedName, breaker, lastGoodAt, lastErrorAt, lastError, Standing(now)?.RetryAfter);
        }
    }
}
