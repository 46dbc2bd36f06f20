namespace WitherAdvisor.WeatherFeeds.Asking;

/// <summary>The hours that a query should bring.</summary>
/// <param name="First">Label of the first.</param>
/// <param name="Last">Label of the last.</param>
internal readonly record struct AskedHours(DateTimeOffset First, DateTimeOffset Last)
{
    public static AskedHours Of(FeedSpan span, DateTimeOffset now)
    {
        DateOnly today = DateOnly.FromDateTime(now.UtcDateTime);
        return span switch
        {
            FeedSpan.Around around => Days(today.AddDays(-around.PastDays), today.AddDays(around.ForecastDays - 1)),
            FeedSpan.Days days => Days(days.First, days.Last),
            _ => throw new ArgumentOutOfRangeException(nameof(span), span, "not a span"),
        };
    }

    public bool Holds(DateTimeOffset time) => time >= First && time <= Last;

    private static AskedHours Days(DateOnly first, DateOnly last) => new(
        new(first, TimeOnly.MinValue, TimeSpan.Zero),
        new(last, new TimeOnly(23, 0), TimeSpan.Zero));
}
