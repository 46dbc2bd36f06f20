using WitherAdvisor.Api.Batches;
using WitherAdvisor.Api.Coefficients;
using WitherAdvisor.Api.Sites;
using WitherAdvisor.Api.Troughs;
using WitherAdvisor.Api.Weather;
using WitherAdvisor.Fields;
using WitherAdvisor.Loft.Advising;
using WitherAdvisor.Loft.Intake;

namespace WitherAdvisor.Api.Advice;

/// <summary>Everything an advice is made of. The same request always gives the same answer.</summary>
public sealed record StatelessAdviceRequest : ICrossChecked
{
    private const int LongestDaysAfterLoading = 7;

    /// <summary>Where.</summary>
    public required SiteRequest Site { get; init; }

    /// <summary>On what.</summary>
    public required TroughRequest Trough { get; init; }

    /// <summary>Which leaf.</summary>
    public required BatchRequest Batch { get; init; }

    /// <summary>
    /// Readings taken, hourly where there are any: 7 days before loading or more, 60 to 90 better. Those after
    /// loading count as the air of the wither. Without any the answer says what it assumed.
    /// </summary>
    [Listed(Shapes.LongestBody)]
    public IReadOnlyList<ReadingRequest>? Weather { get; init; }

    /// <summary>Rain stated by hand for stretches without readings.</summary>
    [Listed(400)]
    public IReadOnlyList<GaugedRainRequest>? RainTotals { get; init; }

    /// <summary>
    /// Forecast: the air of the hours after loading, and of hours before it that have no reading. Readings
    /// always count first, and the answer says where it used the forecast. With the hours just before and just after the last
    /// air read, what the forecast misses there is known, and the hours that follow are moved by it.
    /// </summary>
    [Listed(InputGathering.MostForecast)]
    public IReadOnlyList<ReadingRequest>? Forecast { get; init; }

    /// <summary>Coefficients to use; the set defaults-1 when left out.</summary>
    public CoefficientsRequest? Coefficients { get; init; }

    public IEnumerable<FieldError> CrossCheck() =>
    [
        .. BatchRules.Load(WholeWeightKg, TroughMapping.ToDomain(Trough), Batch.Lots is { Count: > 0 })
            .Select(fault => BatchFaultMapping.ToError(fault).Inside("batch")),
        .. RepeatedTimes.In(Weather ?? [], "weather"),
        .. RepeatedTimes.In(Forecast ?? [], "forecast"),
        .. TooLate(Weather ?? [], "weather"),
        .. TooLate(Forecast ?? [], "forecast"),
    ];

    private double WholeWeightKg => Batch.GreenWeightKg + (Batch.Lots ?? []).Sum(lot => lot.GreenWeightKg);

    private IEnumerable<FieldError> TooLate(IReadOnlyList<ReadingRequest> readings, string list) =>
        readings.Index()
            .Where(reading => reading.Item.Time > Batch.LoadedAt.AddDays(LongestDaysAfterLoading))
            .Select(reading => FieldError.Of(
                FieldPath.Item(list, reading.Index) + ".time", $"\"{Rfc3339.Format(reading.Item.Time)}\"",
                $"at most {LongestDaysAfterLoading} days after batch.loaded_at, {Rfc3339.Format(Batch.LoadedAt)}"));
}
