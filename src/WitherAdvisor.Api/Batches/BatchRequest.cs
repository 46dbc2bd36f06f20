using WitherAdvisor.Fields;
using WitherAdvisor.Loft.Intake;

namespace WitherAdvisor.Api.Batches;

/// <summary>A batch of leaf on a trough.</summary>
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

    public IEnumerable<FieldError> CrossCheck() =>
        BatchRules.Times(PluckedFrom, PluckedTo, LoadedAt, ReadyBy).Select(BatchFaultMapping.ToError);
}
