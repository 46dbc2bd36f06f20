namespace WitherAdvisor.Loft.FeedRefresh;

/// <summary>How often the weather of sites with a feed is fetched, as the operator configured it.</summary>
public sealed class RefreshOptions
{
    public const string Section = "FeedRefresh";

    public static readonly TimeSpan Shortest = TimeSpan.FromMinutes(10);
    public static readonly TimeSpan Longest = TimeSpan.FromDays(1);

    /// <summary>10 min to a day; zero fetches on demand only. Feeds reckon a new forecast every hour or every few.</summary>
    public TimeSpan Every { get; set; } = TimeSpan.FromHours(1);

    public bool OnSchedule => Every > TimeSpan.Zero;

    public bool IsGood => Every == TimeSpan.Zero || (Every >= Shortest && Every <= Longest);
}
