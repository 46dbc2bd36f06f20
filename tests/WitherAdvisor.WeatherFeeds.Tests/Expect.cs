using static WitherAdvisor.WeatherFeeds.FeedAnswer;

namespace WitherAdvisor.WeatherFeeds.Tests;

/// <summary>Says in one word which answer a test wants.</summary>
internal static class Expect
{
    public static Series Series(FeedAnswer answer)
    {
        Assert.True(answer is Series, (answer as Refused)?.Text);
        return (Series)answer;
    }

    public static Refused Refusal(RefusalReason reason, FeedAnswer answer)
    {
        Refused refused = Assert.IsType<Refused>(answer);
        Assert.True(reason == refused.Reason, $"wanted {reason}, was {refused.Reason}: {refused.Text}");
        Assert.True(refused.Text.Length is > 20 and < 600, refused.Text);
        return refused;
    }

    public static string Note(string code, Series series)
    {
        Assert.Contains(series.Notes, note => note.Code == code);
        return series.Notes.First(note => note.Code == code).Text;
    }
}
