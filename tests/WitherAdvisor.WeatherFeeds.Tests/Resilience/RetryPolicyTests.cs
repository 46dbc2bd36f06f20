using Polly;
using Polly.Timeout;
using WitherAdvisor.WeatherFeeds.Resilience;
using static WitherAdvisor.WeatherFeeds.FeedAnswer;

namespace WitherAdvisor.WeatherFeeds.Tests.Resilience;

public sealed class RetryPolicyTests
{
    private static readonly DateTimeOffset Deadline = FeedFixture.FetchedAt.AddSeconds(30);

    private static readonly RefusalReason[] MayPass =
        [RefusalReason.NoConnection, RefusalReason.ConnectionLost, RefusalReason.ServerFault, RefusalReason.TooManyRequests];

    private static readonly RefusalReason[] BrokenBodies =
        [RefusalReason.EmptyBody, RefusalReason.NotJson, RefusalReason.BrokenJson];

    public static TheoryData<RefusalReason> AllReasons => [.. Enum.GetValues<RefusalReason>()];

    [Theory]
    [MemberData(nameof(AllReasons))]
    public void Only_what_may_pass_is_tried_again_and_a_broken_body_once(RefusalReason reason)
    {
        Outcome<FeedAnswer> outcome = Refusal(reason);

        Assert.Equal(MayPass.Contains(reason) || BrokenBodies.Contains(reason), RetryPolicy.AllowsAnotherTry(outcome, 0, Deadline));
        Assert.Equal(MayPass.Contains(reason), RetryPolicy.AllowsAnotherTry(outcome, 1, Deadline));
    }

    [Theory]
    [MemberData(nameof(AllReasons))]
    public void Only_illness_opens_the_breaker(RefusalReason reason) => Assert.Equal(
        reason != RefusalReason.TooManyRequests && (MayPass.Contains(reason) || BrokenBodies.Contains(reason)),
        RetryPolicy.CountsAsFailure(Refusal(reason)));

    [Fact]
    public void A_try_that_timed_out_is_tried_again_and_is_illness()
    {
        var outcome = Outcome.FromException<FeedAnswer>(new TimeoutRejectedException());

        Assert.True(RetryPolicy.AllowsAnotherTry(outcome, 1, Deadline));
        Assert.True(RetryPolicy.CountsAsFailure(outcome));
    }

    [Theory]
    [InlineData(30, true)]
    [InlineData(31, false)]
    public void Being_sent_away_beyond_the_total_limit_is_an_answer(int seconds, bool again) =>
        Assert.Equal(again, RetryPolicy.AllowsAnotherTry(
            Outcome.FromResult<FeedAnswer>(new Refused(RefusalReason.TooManyRequests, new FeedFault.LimitUsedUp(null), FeedFixture.FetchedAt.AddSeconds(seconds))), 0, Deadline));

    private static Outcome<FeedAnswer> Refusal(RefusalReason reason) =>
        Outcome.FromResult<FeedAnswer>(new Refused(reason, new FeedFault.SaidThen("for a test")));
}
