using WitherAdvisor.Fields;
using WitherAdvisor.Leaf;

namespace WitherAdvisor.Api.Batches;

/// <summary>Water on the leaf as somebody found it at loading. A measured value wins over feel, feel over the weather.</summary>
public sealed record SurfaceWaterRequest
{
    /// <summary>By weighing a sample before and after blotting or spinning: water per kg of leaf without it.</summary>
    /// <example>0.12</example>
    [Measured(0, 0.6)]
    public double? MeasuredKgPerKg { get; init; }

    /// <summary>By a squeezed handful: dry palm, damp palm, wet palm, or water dripping from it.</summary>
    /// <example>wet</example>
    public SurfaceFeel? Feel { get; init; }

    /// <summary>Null where nobody found anything.</summary>
    internal static SurfaceWaterRequest? Of(double? measuredKgPerKg, SurfaceFeel? feel) =>
        measuredKgPerKg is null && feel is null ? null : new() { MeasuredKgPerKg = measuredKgPerKg, Feel = feel };
}
