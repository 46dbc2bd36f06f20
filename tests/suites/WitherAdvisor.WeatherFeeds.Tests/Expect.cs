using static WitherAdvisor.WeatherFeeds.FeedAnswer;

namespace WitherAdvisor.WeatherFeeds.Tests;

/// <summary>Says in one word which answer a test wants.</summary>
internal static class Expect
{
    public static Series Series(FeedAnswer answer)
    {
        Assert.True(answer is Series, (answer as Refused)?.Fault.ToString());
        return (Series)answer;
    }

    public static Refused Refusal(RefusalReason reason, FeedAnswer answer)
    {
        Refused refused = Assert.IsType<Refused>(answer);
        Assert.True(reason == refused.Reason, $"wanted {reason}, was {refused.Reason}: {refused.Fault}");
        return refused;
    }

    public static T Note<T>(Series series)
        where T : FeedNote
    {
        Assert.Contains(series.Notes, note => note is T);
        return series.Notes.OfType<T>().First();
    }
}
