using WitherAdvisor.Loft.Kept.Sites;
using WitherAdvisor.Loft.Kept.Weather;
using WitherAdvisor.Readings;
using WitherAdvisor.Readings.Sources;
using WitherAdvisor.Review;

namespace WitherAdvisor.Loft.WeatherReviewing;

/// <summary>Reads what is kept of a stretch and says where it is from, where its holes are and how old it is.</summary>
public sealed class KeptWeather(IWeatherStore store)
{
    /// <summary>Readings this near still tell of the stretch's ends.</summary>
    private static readonly TimeSpan Reach = TimeSpan.FromHours(4);

    /// <summary>What is kept of a stretch, as it stands now.</summary>
    /// <param name="from">The first instant.</param>
    /// <param name="to">The last.</param>
    public async Task<KeptStretch> Of(StoredSite site, DateTimeOffset from, DateTimeOffset to, DateTimeOffset now, CancellationToken cancel)
    {
        IReadOnlyList<SourcedReading> around = await store.ReadSourced(site.Id, from - Reach, to + Reach, cancel);
        IReadOnlyList<RainTotal> totals = await store.ReadRainTotals(site.Id, from, to, cancel);
        ComposedWeather composed = WeatherComposition.Of(around, totals);
        bool Within(DateTimeOffset time) => time >= from && time <= to;
        return new(
            [.. around.Where(row => Within(row.Reading.Time))],
            totals,
            [.. composed.Readings.Where(reading => Within(reading.Best.Time))],
            [.. WeatherHoles.Between(from, to, now, composed, site.Site)],
            WeatherAge.Of(composed, now));
    }
}
