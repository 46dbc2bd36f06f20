using WitherAdvisor.Api.Weather.Review;
using WitherAdvisor.Loft.Sites;
using WitherAdvisor.Loft.WeatherReviewing;
using WitherAdvisor.Readings.Sources;

namespace WitherAdvisor.Api.Weather;

/// <summary>What is kept of a stretch as an answer, in the site's time.</summary>
internal static class WeatherMapping
{
    /// <summary>With one kind of what callers gave.</summary>
    /// <param name="kind">Which of a caller's readings to list.</param>
    public static WeatherAnswer ToAnswer(KeptStretch kept, WeatherKind kind, SiteClock clock) => new()
    {
        Readings = [.. kept.Readings.Where(row => row.Source == WeatherKinds.ToSource(kind)).Select(row => ReadingMapping.ToInput(row.Reading))],
        RainTotals = kind == WeatherKind.Observed ? [.. kept.RainTotals.Select(RainTotalInput.Of)] : [],
        Best = [.. kept.Best.Select(reading => ToAnswer(reading, clock))],
        Holes = [.. kept.Holes.Select(hole => ReviewMapping.ToAnswer(hole, clock))],
        Age = ReviewMapping.ToAnswer(kept.Age, clock),
    };

    private static SourcedReadingAnswer ToAnswer(ComposedReading reading, SiteClock clock) => new()
    {
        Reading = ReadingMapping.ToInput(reading.Best),
        Sources = new()
        {
            DryBulb = ToAnswer(reading.Origins.DryBulb, clock),
            Humidity = ToAnswer(reading.Origins.Humidity, clock),
            Rain = ToAnswer(reading.Origins.Rain, clock),
            Wind = ToAnswer(reading.Origins.Wind, clock),
            StationPressure = ToAnswer(reading.Origins.StationPressure, clock),
            Shortwave = ToAnswer(reading.Origins.Shortwave, clock),
        },
    };

    private static ValueSourceAnswer? ToAnswer(ValueOrigin? origin, SiteClock clock) => origin is null
        ? null
        : new() { Source = origin.Source, Feed = origin.Feed, SavedAt = clock.Local(origin.SavedAt) };
}
