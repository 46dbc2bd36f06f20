using Polly;
using Polly.Timeout;
using static WitherAdvisor.WeatherFeeds.FeedAnswer;

namespace WitherAdvisor.WeatherFeeds.Resilience;

/// <summary>Which faults are worth another try, and which speak of the feed's health.</summary>
internal static class RetryPolicy
{
    /// <summary>A broken body may be a broken moment; the second time it is what the feed has to say.</summary>
    private const int RetriesOfBrokenBody = 1;

    /// <summary>Whether the same question may bring another answer, in the time that is left.</summary>
    /// <param name="outcome">What the last try gave.</param>
    /// <param name="retriesDone">0 after the first try.</param>
    /// <param name="deadline">When the total limit strikes: to be sent away for longer is an answer, not a pause.</param>
    public static bool AllowsAnotherTry(Outcome<FeedAnswer> outcome, int retriesDone, DateTimeOffset deadline) => outcome switch
    {
        { Exception: TimeoutRejectedException } => true,
        { Result: Refused refused } => refused.RetryAfter is DateTimeOffset again && again > deadline
            ? false
            : MayPass(refused.Reason) || (IsBrokenBody(refused.Reason) && retriesDone < RetriesOfBrokenBody),
        _ => false,
    };

    /// <summary>Being sent away politely, or refused for what was asked, is no illness of the feed.</summary>
    public static bool CountsAsFailure(Outcome<FeedAnswer> outcome) => outcome switch
    {
        { Exception: TimeoutRejectedException } => true,
        { Result: Refused { Reason: not RefusalReason.TooManyRequests } refused } =>
            MayPass(refused.Reason) || IsBrokenBody(refused.Reason),
        _ => false,
    };

    private static bool MayPass(RefusalReason reason) => reason is RefusalReason.NoConnection or RefusalReason.ConnectionLost
        or RefusalReason.ServerFault or RefusalReason.TooManyRequests;

    private static bool IsBrokenBody(RefusalReason reason) => reason is RefusalReason.EmptyBody or RefusalReason.NotJson
        or RefusalReason.BrokenJson;
}
