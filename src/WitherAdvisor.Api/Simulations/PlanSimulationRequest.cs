using WitherAdvisor.Api.Batches;
using WitherAdvisor.Api.Coefficients;
using WitherAdvisor.Api.Sites;
using WitherAdvisor.Api.Troughs;
using WitherAdvisor.Api.Weather;
using WitherAdvisor.Fields;
using WitherAdvisor.Loft.Intake;

namespace WitherAdvisor.Api.Simulations;

/// <summary>A wither whose plan the caller fixes, to see what it would do.</summary>
public sealed record PlanSimulationRequest : ICrossChecked
{
    /// <summary>Where.</summary>
    public required SiteRequest Site { get; init; }

    /// <summary>On what.</summary>
    public required TroughRequest Trough { get; init; }

    /// <summary>Weight as it came in, with its surface water.</summary>
    /// <example>1176</example>
    [Measured(1, 30000)]
    public required double GreenWeightKg { get; init; }

    /// <summary>The leaf at loading.</summary>
    public required SimulatedLeafRequest Leaf { get; init; }

    /// <summary>Hour 0.</summary>
    /// <example>2026-03-01T13:00:00+05:30</example>
    public required DateTimeOffset LoadedAt { get; init; }

    /// <summary>Ambient air; one reading or more with dry bulb and a humidity. One alone is held all through.</summary>
    [Listed(1000, Fewest = 1)]
    public required IReadOnlyList<ReadingRequest> Air { get; init; }

    /// <summary>Stages in order; the last one's end is the stop.</summary>
    [Listed(20, Fewest = 1)]
    public required IReadOnlyList<SimulatedStageRequest> Stages { get; init; }

    /// <summary>Hours from loading at which the leaf is turned; never when left out.</summary>
    /// <example>[2, 4, 6, 8]</example>
    [Listed(100)]
    [Measured(0, 48)]
    public IReadOnlyList<double>? TurnHours { get; init; }

    /// <summary>Share of the trough's full airflow; 100 when left out.</summary>
    /// <example>100</example>
    [Measured(10, 100)]
    public double? FanSharePercent { get; init; }

    /// <summary>Coefficients to use; the set defaults-1 when left out.</summary>
    public CoefficientsRequest? Coefficients { get; init; }

    public IEnumerable<FieldError> CrossCheck() =>
    [
        .. BatchRules.Load(GreenWeightKg, TroughMapping.ToDomain(Trough)).Select(BatchFaultMapping.ToError),
        .. RepeatedTimes.In(Air, "air"),
        .. StagesOutOfOrder(),
        .. TurnsAfterTheStop(),
        .. AirWithoutHumidity(),
    ];

    private IEnumerable<FieldError> StagesOutOfOrder() =>
        Stages.Zip(Stages.Skip(1)).Index()
            .Where(pair => pair.Item.Second.ToHour <= pair.Item.First.ToHour)
            .Select(pair => FieldError.Of(
                FieldPath.Item("stages", pair.Index + 1) + ".to_hour", $"{pair.Item.Second.ToHour}",
                $"above the stage before, {pair.Item.First.ToHour} h"));

    private IEnumerable<FieldError> TurnsAfterTheStop() =>
        (TurnHours ?? []).Index()
            .Where(turn => turn.Item > Stages[^1].ToHour)
            .Select(turn => FieldError.Of(
                FieldPath.Item("turn_hours", turn.Index), $"{turn.Item}", $"at most the stop, {Stages[^1].ToHour} h"));

    private IEnumerable<FieldError> AirWithoutHumidity()
    {
        if (!Air.Any(reading => reading.DryBulbC is not null
            && (reading.DewPointC ?? reading.WetBulbC ?? reading.RelativeHumidityPercent) is not null))
        {
            yield return FieldError.Of("air", $"{Air.Count} readings", "at least one with dry_bulb_c and a humidity");
        }
    }
}
