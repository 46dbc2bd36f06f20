using System.Text.Json.Serialization;
using WitherAdvisor.Fields;
using WitherAdvisor.Loft.Intake;

namespace WitherAdvisor.Api.Batches;

/// <summary>A batch of leaf on a trough; where it comes in lots, its own members tell of the first.</summary>
public record BatchRequest : ICrossChecked
{
    /// <summary>What keeps it apart from other lots.</summary>
    public required LabelRequest Label { get; init; }

    /// <summary>When plucking of it began; at most 30 hours before loading.</summary>
    /// <example>2026-03-01T07:00:00+05:30</example>
    public required DateTimeOffset PluckedFrom { get; init; }

    /// <summary>When plucking of it ended.</summary>
    /// <example>2026-03-01T11:30:00+05:30</example>
    public required DateTimeOffset PluckedTo { get; init; }

    /// <summary>When it lay on the trough with the air on: hour 0 of the plan.</summary>
    /// <example>2026-03-01T13:00:00+05:30</example>
    public required DateTimeOffset LoadedAt { get; init; }

    /// <summary>Weight as it came in, with its surface water.</summary>
    /// <example>1176</example>
    [Measured(1, 30000)]
    public required double GreenWeightKg { get; init; }

    /// <summary>Water on the leaf, measured or by feel; estimated from the weather when left out.</summary>
    public SurfaceWaterRequest? SurfaceWater { get; init; }

    /// <summary>Moisture of the leaf without its surface water, oven-dry; estimated from the weather when left out.</summary>
    /// <example>77.5</example>
    [Measured(60, 90)]
    public double? MeasuredMoistureWetBasisPercent { get; init; }

    /// <summary>When rolling wants it, at most 48 hours after loading; any time will do when left out.</summary>
    /// <example>2026-03-02T01:00:00+05:30</example>
    public DateTimeOffset? ReadyBy { get; init; }

    /// <summary>Further lots laid on this leaf through the afternoon, come or expected, in any order; none when left out. The plan is for all together.</summary>
    [Listed(BatchRules.MostLots)]
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public IReadOnlyList<LotRequest>? Lots { get; init; }

    public IEnumerable<FieldError> CrossCheck() =>
    [
        .. BatchRules.Times(PluckedFrom, PluckedTo, LoadedAt, ReadyBy).Select(BatchFaultMapping.ToError),
        .. (Lots ?? []).Index().SelectMany(lot => FromFirst(lot.Item).Select(error => error.Inside(FieldPath.Item("lots", lot.Index)))),
    ];

    private IEnumerable<FieldError> FromFirst(LotRequest lot)
    {
        if (lot.LoadedAt < LoadedAt)
        {
            yield return FieldError.Of(
                "loaded_at", $"\"{Rfc3339.Format(lot.LoadedAt)}\"", $"at or after loaded_at of the first lot, {Rfc3339.Format(LoadedAt)}");
        }

        if ((lot.LoadedAt - LoadedAt).TotalHours > BatchRules.MostHoursBetweenLots)
        {
            yield return BatchFaultMapping.ToError(new BatchFault.LotTooFarApart(lot.LoadedAt, LoadedAt, BatchRules.MostHoursBetweenLots));
        }
    }
}
