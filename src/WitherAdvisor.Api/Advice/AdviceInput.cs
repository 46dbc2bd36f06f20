using WitherAdvisor.Api.Batches;
using WitherAdvisor.Api.Input;
using WitherAdvisor.Api.Sites;
using WitherAdvisor.Api.Troughs;
using WitherAdvisor.Api.Weather;

namespace WitherAdvisor.Api.Advice;

/// <summary>Everything an advice is made of. The same request always gives the same answer.</summary>
public sealed record AdviceInput : ICrossChecked
{
    private const int LongestDaysAfterLoading = 7;

    /// <summary>Where.</summary>
    public required SiteInput Site { get; init; }

    /// <summary>On what.</summary>
    public required TroughInput Trough { get; init; }

    /// <summary>Which leaf.</summary>
    public required BatchInput Batch { get; init; }

    /// <summary>
    /// Readings taken, hourly where there are any: 7 days before loading or more, 60 to 90 better. Those after
    /// loading count as the air of the wither. Without any the answer says what it assumed.
    /// </summary>
    [Listed(Shapes.LongestBody)]
    public IReadOnlyList<ReadingInput>? Weather { get; init; }

    /// <summary>Rain stated by hand for stretches without readings.</summary>
    [Listed(400)]
    public IReadOnlyList<RainTotalInput>? RainTotals { get; init; }

    /// <summary>Air foretold for the hours after loading. What is foretold for hours before it, or for hours that were read, is not used.</summary>
    [Listed(1000)]
    public IReadOnlyList<ReadingInput>? Forecast { get; init; }

    /// <summary>Coefficients to use; the set defaults-1 when left out.</summary>
    public CoefficientsInput? Coefficients { get; init; }

    public IEnumerable<FieldError> CrossCheck() =>
    [
        .. LoadLimit.Check(Batch.GreenWeightKg, TroughMapping.ToDomain(Trough), "batch.green_weight_kg"),
        .. RepeatedTimes.In(Weather ?? [], "weather"),
        .. RepeatedTimes.In(Forecast ?? [], "forecast"),
        .. TooLate(Weather ?? [], "weather"),
        .. TooLate(Forecast ?? [], "forecast"),
        .. ForecastOfThePast(),
    ];

    private IEnumerable<FieldError> TooLate(IReadOnlyList<ReadingInput> readings, string list) =>
        readings.Index()
            .Where(reading => reading.Item.Time > Batch.LoadedAt.AddDays(LongestDaysAfterLoading))
            .Select(reading => FieldError.Of(
                FieldPath.Item(list, reading.Index) + ".time", $"\"{Rfc3339.Format(reading.Item.Time)}\"",
                $"at most {LongestDaysAfterLoading} days after batch.loaded_at, {Rfc3339.Format(Batch.LoadedAt)}"));

    private IEnumerable<FieldError> ForecastOfThePast()
    {
        if (Forecast is { Count: > 0 } forecast && forecast.All(reading => reading.Time < Batch.LoadedAt))
        {
            yield return FieldError.Of("forecast", $"{forecast.Count} items, all earlier",
                $"at least one time at or after batch.loaded_at, {Rfc3339.Format(Batch.LoadedAt)}");
        }
    }
}
