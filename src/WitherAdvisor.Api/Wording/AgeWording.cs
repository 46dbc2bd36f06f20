using WitherAdvisor.Loft.FeedRefresh;
using WitherAdvisor.Review;

namespace WitherAdvisor.Api.Wording;

/// <summary>How old weather is, in words.</summary>
public static class AgeWording
{
    private const double HoursOfDaysInWords = 48;

    /// <summary>"Last reading 3 h ago".</summary>
    public static string LastRead(WeatherAge age) =>
        age.ReadAgoH is { } hours ? $"Last reading {Ago(hours)}" : "Nothing has been read yet";

    /// <summary>When that was, and what is foretold.</summary>
    public static string Details(WeatherAge age, WallClock clock) => string.Join(' ',
        [
            .. age.LastRead is { } read ? (string[])[$"It was of {clock.DateAndClock(read)}."] : [],
            .. age.LastObserved is { } observed && observed != age.LastRead ? (string[])[$"At the site itself the last was of {clock.DateAndClock(observed)}."] : [],
            .. age.LastGauged is { } gauged ? (string[])[$"The rain gauge was last read {clock.DateAndClock(gauged)}."] : [],
            Forecast(age, clock),
        ]);

    /// <summary>How a feed has been doing.</summary>
    public static string Feed(FeedState feed, WallClock clock)
    {
        string good = feed.LastGood is { } last ? $"It last gave weather {clock.DateAndClock(last.FetchedAt)}." : "It has given no weather yet.";
        string refused = feed.Last is { Refusal: { } refusal } ? $" When last asked, {clock.DateAndClock(feed.Last.FetchedAt)}, it did not: {FeedFaultWording.Sentence(refusal)}" : "";
        string gone = feed.Attribution is null ? " The operator has no such feed any more." : "";
        return good + refused + gone;
    }

    private static string Forecast(WeatherAge age, WallClock clock) =>
        age is { LastForetold: { } last, ForecastAgoH: { } hours } && last > age.Now
            ? $"The forecast was saved {Ago(hours)} and reaches to {clock.DayAndClock(last)}."
            : "There is no forecast of the coming night.";

    /// <summary>"3 h ago"; minutes below an hour, days from two on.</summary>
    private static string Ago(double hours) => hours switch
    {
        < 0 => "later than this",
        < 1.0 / 60 => "just now",
        < 1 => $"{Figures.Fixed(hours * 60, 0)} min ago",
        < HoursOfDaysInWords => $"{Figures.Fixed(hours, 0)} h ago",
        _ => $"{Figures.Fixed(hours / 24, 0)} days ago",
    };
}
