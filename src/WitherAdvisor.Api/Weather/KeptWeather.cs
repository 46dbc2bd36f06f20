using WitherAdvisor.Api.Sites;
using WitherAdvisor.Api.Weather.Review;
using WitherAdvisor.Loft.Kept.Sites;
using WitherAdvisor.Loft.Kept.Weather;
using WitherAdvisor.Loft.Sites;
using WitherAdvisor.Readings;
using WitherAdvisor.Readings.Sources;
using WitherAdvisor.Review;

namespace WitherAdvisor.Api.Weather;

/// <summary>Reads what is kept of a stretch and says where it is from, where its holes are and how old it is.</summary>
internal sealed class KeptWeather(IWeatherStore store)
{
    /// <summary>Readings this near still tell of the stretch's ends.</summary>
    private static readonly TimeSpan Reach = TimeSpan.FromHours(4);

    public async Task<WeatherAnswer> Of(StoredSite site, ReadingsQuery asked, DateTimeOffset now, CancellationToken cancel)
    {
        IReadOnlyList<SourcedReading> around = await store.ReadSourced(site.Id, asked.From - Reach, asked.To + Reach, cancel);
        IReadOnlyList<RainTotal> totals = await store.ReadRainTotals(site.Id, asked.From, asked.To, cancel);
        ComposedWeather composed = WeatherComposition.Of(around, totals);
        SiteClock clock = new(site.TimeZone);
        bool Within(DateTimeOffset time) => time >= asked.From && time <= asked.To;
        return new()
        {
            Readings =
            [
                .. around.Where(row => row.Source == WeatherKinds.ToSource(asked.Kind) && Within(row.Reading.Time))
                    .Select(row => ReadingMapping.ToInput(row.Reading)),
            ],
            RainTotals = asked.Kind == WeatherKind.Observed ? [.. totals.Select(RainTotalInput.Of)] : [],
            Best = [.. composed.Readings.Where(reading => Within(reading.Best.Time)).Select(reading => ToAnswer(reading, clock))],
            Holes =
            [
                .. WeatherHoles.Between(asked.From, asked.To, now, composed, site.Site)
                    .Select(hole => ReviewMapping.ToAnswer(hole, clock)),
            ],
            Age = ReviewMapping.ToAnswer(WeatherAge.Of(composed, now), clock),
        };
    }

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
