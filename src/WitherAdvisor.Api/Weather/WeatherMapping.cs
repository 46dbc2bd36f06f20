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
    public static WeatherResponse ToResponse(KeptStretch kept, WeatherKind kind, SiteClock clock) => new()
    {
        Readings = [.. kept.Readings.Where(row => row.Source == WeatherKinds.ToSource(kind)).Select(row => ReadingMapping.ToRequest(row.Reading))],
        RainTotals = kind == WeatherKind.Observed ? [.. kept.RainTotals.Select(RainTotalRequest.Of)] : [],
        Best = [.. kept.Best.Select(reading => ToResponse(reading, clock))],
        Holes = [.. kept.Holes.Select(hole => ReviewMapping.ToResponse(hole, clock))],
        Age = ReviewMapping.ToResponse(kept.Age, clock),
    };

    private static SourcedReadingResponse ToResponse(ComposedReading reading, SiteClock clock) => new()
    {
        Reading = ReadingMapping.ToRequest(reading.Best),
        Sources = new()
        {
            DryBulb = ToResponse(reading.Origins.DryBulb, clock),
            Humidity = ToResponse(reading.Origins.Humidity, clock),
            Rain = ToResponse(reading.Origins.Rain, clock),
            Wind = ToResponse(reading.Origins.Wind, clock),
            StationPressure = ToResponse(reading.Origins.StationPressure, clock),
            Shortwave = ToResponse(reading.Origins.Shortwave, clock),
        },
    };

    private static ValueSourceResponse? ToResponse(ValueOrigin? origin, SiteClock clock) => origin is null
        ? null
        : new() { Source = origin.Source, Feed = origin.Feed, SavedAt = clock.Local(origin.SavedAt) };
}
