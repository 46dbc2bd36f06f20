namespace WitherAdvisor.Words.Feeds;

/// <summary>Hours of a feed as feeds and operators write them, in UTC.</summary>
internal static class FeedHour
{
    public static string Text(DateTimeOffset hour) => $"{hour:yyyy-MM-dd'T'HH:mm'Z'}";
}
