using WitherAdvisor.Advice;
using WitherAdvisor.Api.Batches;
using WitherAdvisor.Api.Sites;
using WitherAdvisor.Api.Troughs;
using WitherAdvisor.Api.Weather;
using WitherAdvisor.Weather;

namespace WitherAdvisor.Api.Advice;

/// <summary>From the request to the domain.</summary>
internal static class AdviceInputMapping
{
    public static AdviceRequest ToDomain(AdviceInput input)
    {
        DateTimeOffset loadedAt = input.Batch.LoadedAt;
        List<WeatherReading> read = Readings(input.Weather);
        return new AdviceRequest(
            SiteMapping.ToDomain(input.Site),
            TroughMapping.ToDomain(input.Trough),
            BatchMapping.ToDomain(input.Batch),
            read.FindAll(reading => reading.Time <= loadedAt),
            [.. (input.RainTotals ?? []).Select(total => total.ToDomain())],
            NightAir(read, Readings(input.Forecast), loadedAt),
            CoefficientsMapping.ToDomain(input.Coefficients));
    }

    /// <summary>Air from loading on: as it was read where it was, as it was foretold where not.</summary>
    private static List<WeatherReading> NightAir(
        List<WeatherReading> read, List<WeatherReading> foretold, DateTimeOffset loadedAt)
    {
        List<WeatherReading> since = read.FindAll(reading => reading.Time > loadedAt);
        HashSet<DateTimeOffset> known = [.. since.Select(reading => reading.Time)];
        return [.. since.Concat(foretold.Where(reading => reading.Time >= loadedAt && !known.Contains(reading.Time)))
            .OrderBy(reading => reading.Time)];
    }

    private static List<WeatherReading> Readings(IReadOnlyList<ReadingInput>? readings) =>
        [.. (readings ?? []).Select(ReadingMapping.ToDomain).OrderBy(reading => reading.Time)];
}
