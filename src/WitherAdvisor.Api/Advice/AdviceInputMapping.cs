using WitherAdvisor.Advice;
using WitherAdvisor.Api.Batches;
using WitherAdvisor.Api.Coefficients;
using WitherAdvisor.Api.Sites;
using WitherAdvisor.Api.Troughs;
using WitherAdvisor.Api.Weather;
using WitherAdvisor.Leaf;
using WitherAdvisor.Readings;

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
            Foretold(read, Readings(input.Forecast), loadedAt),
            CoefficientsMapping.ToDomain(input.Coefficients));
    }

    /// <summary>What was foretold and, since it is the air of the night too, what was read after loading: it stands last and wins.</summary>
    private static List<WeatherReading> Foretold(
        List<WeatherReading> read, List<WeatherReading> foretold, DateTimeOffset loadedAt) =>
        [.. foretold.Concat(read.Where(reading => reading.Time > loadedAt)).OrderBy(reading => reading.Time)];

    private static List<WeatherReading> Readings(IReadOnlyList<ReadingInput>? readings) =>
        [.. (readings ?? []).Select(ReadingMapping.ToDomain).OrderBy(reading => reading.Time)];
}
