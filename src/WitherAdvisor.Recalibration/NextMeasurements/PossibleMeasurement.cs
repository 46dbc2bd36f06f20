using WitherAdvisor.Spells;

namespace WitherAdvisor.Recalibration.NextMeasurements;

/// <summary>A measurement that could be made on a batch.</summary>
/// <param name="Code">snake_case name.</param>
/// <param name="Spells">Of which it makes sense to ask.</param>
/// <param name="Answered">A wither with that measurement and no other.</param>
internal sealed record PossibleMeasurement(
    string Code, IReadOnlyList<SpellKind> Spells, Func<ObservedWither, ObservedWither> Answered)
{
    private static readonly SpellKind[] Any = [SpellKind.Wet, SpellKind.Ordinary, SpellKind.DryWindy];

    public static IReadOnlyList<PossibleMeasurement> All { get; } =
    [
        new("surface_water_at_loading",
            [SpellKind.Wet, SpellKind.Ordinary], wither => Bare(wither) with { AtLoading = new(SurfaceWaterKgPerKg: 0.1) }),
        new("oven_test_at_loading",
            Any, wither => Bare(wither) with { AtLoading = new(MoistureWetBasis: 0.77) }),
        new("sample_at_2_hours",
            Any, wither => Bare(wither) with { Found = new(Weighings: [new(2, 0.9)]) }),
        new("weight_at_unloading",
            Any, wither => Bare(wither) with { Found = new(WitheredWeightKg: wither.GreenWeightKg * 0.6) }),
        new("oven_test_at_unloading",
            Any, wither => Bare(wither) with { Found = new(MoistureWetBasis: 0.6) }),
        new("bottom_and_top_at_unloading",
            Any, wither => Bare(wither) with { Found = new(ByHeight: new(0.6, null, 0.6)) }),
    ];

    private static ObservedWither Bare(ObservedWither wither) => wither with { AtLoading = LoadingReadings.None, Found = new() };
}
