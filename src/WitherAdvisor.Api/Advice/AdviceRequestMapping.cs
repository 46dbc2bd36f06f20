using WitherAdvisor.Advice;
using WitherAdvisor.Api.Batches;
using WitherAdvisor.Api.Coefficients;
using WitherAdvisor.Api.Sites;
using WitherAdvisor.Api.Troughs;
using WitherAdvisor.Api.Weather;
using WitherAdvisor.Coefficients;
using WitherAdvisor.Leaf;
using WitherAdvisor.Loft.Advising;
using WitherAdvisor.Loft.Records;
using WitherAdvisor.Readings;

namespace WitherAdvisor.Api.Advice;

/// <summary>All that an advice is made of, between request and domain.</summary>
internal static class AdviceRequestMapping
{
    public static AdviceInputs ToDomain(StatelessAdviceRequest input)
    {
        Batch batch = BatchMapping.ToDomain(input.Batch);
        DateTimeOffset come = batch.LastCameAt;
        List<WeatherReading> read = Readings(input.Weather);
        return new(input.Site.Name, input.Site.TimeZone, input.Trough.Name, new AdviceRequest(
            SiteMapping.ToDomain(input.Site),
            TroughMapping.ToDomain(input.Trough),
            batch,
            read.FindAll(reading => reading.Time <= come),
            [.. (input.RainTotals ?? []).Select(total => total.ToDomain())],
            AirAhead.Of(read, Readings(input.Forecast), come),
            CoefficientsMapping.ToDomain(input.Coefficients)));
    }

    /// <summary>As a caller would send it for the same answer, with every setting stated.</summary>
    public static StatelessAdviceRequest ToRequest(AdviceInputs inputs)
    {
        AdviceRequest request = inputs.Request;
        return new()
        {
            Site = SiteMapping.ToRequest(inputs.SiteName, inputs.TimeZone, request.Site),
            Trough = TroughMapping.ToRequest(inputs.TroughName, request.Trough),
            Batch = BatchMapping.ToRequest(request.Batch),
            Weather = [.. request.Readings.Select(ReadingMapping.ToRequest)],
            RainTotals = [.. request.RainTotals.Select(GaugedRainRequest.Of)],
            Forecast = [.. request.Forecast.Select(ReadingMapping.ToRequest)],
            Coefficients = request.Coefficients == new WitherCoefficients() ? null : CoefficientsMapping.ToRequest(request.Coefficients),
        };
    }

    private static List<WeatherReading> Readings(IReadOnlyList<ReadingRequest>? readings) =>
        [.. (readings ?? []).Select(ReadingMapping.ToDomain).OrderBy(reading => reading.Time)];
}
