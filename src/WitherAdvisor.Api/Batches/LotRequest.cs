using WitherAdvisor.Fields;
using WitherAdvisor.Loft.Intake;

namespace WitherAdvisor.Api.Batches;

/// <summary>A further lot of a batch, laid on the leaf that lies on the trough. Hour and weight are enough.</summary>
public sealed record LotRequest : ICrossChecked
{
    /// <summary>When it lay on the trough, or is expected to; within 12 hours of the other lots.</summary>
    /// <example>2026-03-01T15:30:00+05:30</example>
    public required DateTimeOffset LoadedAt { get; init; }

    /// <summary>Weight as it came in, with its surface water.</summary>
    /// <example>200</example>
    [Measured(1, 30000)]
    public required double GreenWeightKg { get; init; }

    /// <summary>Whether it lies on the trough or is expected; laid when left out. A lot that comes within 2 hours of an expected one takes its place.</summary>
    /// <example>laid</example>
    public LotStatus? Status { get; init; }

    /// <summary>What keeps it apart from other lots; that of the batch when left out.</summary>
    public LabelRequest? Label { get; init; }

    /// <summary>When plucking of it began; at most 30 hours before loading. As long before loading as that of the first lot when left out.</summary>
    /// <example>2026-03-01T11:30:00+05:30</example>
    public DateTimeOffset? PluckedFrom { get; init; }

    /// <summary>When plucking of it ended; likewise.</summary>
    /// <example>2026-03-01T14:30:00+05:30</example>
    public DateTimeOffset? PluckedTo { get; init; }

    /// <summary>Water on the leaf, measured or by feel; estimated from the weather when left out.</summary>
    public SurfaceWaterRequest? SurfaceWater { get; init; }

    /// <summary>Moisture of the leaf without its surface water, oven-dry; estimated from the weather when left out.</summary>
    /// <example>77.5</example>
    [Measured(60, 90)]
    public double? MeasuredMoistureWetBasisPercent { get; init; }

    public IEnumerable<FieldError> CrossCheck() =>
        BatchRules.Times(PluckedFrom, PluckedTo, LoadedAt, null).Select(BatchFaultMapping.ToError);
}
