using WitherAdvisor.Review;
using WitherAdvisor.Words.Units;

namespace WitherAdvisor.Words.Weather;

/// <summary>How old weather is, in words.</summary>
public static class AgeWording
{
    private const double HoursOfDaysInWords = 48;

    /// <summary>"Last reading 3 h ago".</summary>
    public static string LastKnown(Wordbook words, WeatherAge age) =>
        age.KnownAgoH is { } hours ? words.Say("age.last_reading", ("ago", Ago(words, hours))) : words["age.never_read"];

    /// <summary>When that was, and what is forecast.</summary>
    public static string Details(Wordbook words, WeatherAge age, WallClock clock) => string.Join(' ',
        [
            .. age.LastKnown is { } read ? (string[])[words.Say("age.read_at", ("time", clock.DateAndClock(read)))] : [],
            .. age.LastObserved is { } observed && observed != age.LastKnown
                ? (string[])[words.Say("age.observed_at", ("time", clock.DateAndClock(observed)))]
                : [],
            .. age.LastGauged is { } gauged ? (string[])[words.Say("age.gauged_at", ("time", clock.DateAndClock(gauged)))] : [],
            Forecast(words, age, clock),
        ]);

    private static string Forecast(Wordbook words, WeatherAge age, WallClock clock) =>
        age is { LastForecast: { } last, ForecastAgoH: { } hours } && last > age.Now
            ? words.Say("age.forecast", ("ago", Ago(words, hours)), ("time", clock.DayAndClock(last)))
            : words["age.no_forecast"];

    /// <summary>"3 h ago"; minutes below an hour, days from two on.</summary>
    private static string Ago(Wordbook words, double hours) => hours switch
    {
        < 0 => words["ago.ahead"],
        < 1.0 / 60 => words["ago.now"],
        < 1 => words.Say("ago.minutes", ("count", Figures.Fixed(hours * 60, 0))),
        < HoursOfDaysInWords => words.Say("ago.hours", ("count", Figures.Fixed(hours, 0))),
        _ => words.Say("ago.days", ("count", Figures.Fixed(hours / 24, 0))),
    };
}
