using WitherAdvisor.Coefficients;
using WitherAdvisor.Leaf;
using WitherAdvisor.LeafAtLoading;
using WitherAdvisor.Plans.Uncertainty;
using WitherAdvisor.Sensitivities;

namespace WitherAdvisor.Documentation;

/// <summary>Standard deviations that no set of coefficients holds, and how many cases are tried.</summary>
internal static class UncertaintyConstants
{
    private const string Memory = "From memory";

    public static IReadOnlyList<ModelConstant> All { get; } =
    [
        Of("cases", Ensemble.Members, "", CoefficientStatus.Definition, "A lattice of 7 by 7 points without its middle"),
        Remembered("cuticular_conductance_untaught", CoefficientSpreads.CuticularConductanceUntaught, "1"),
        Remembered("held_air", UncertainSpreads.HeldAirK, "K"),
        Remembered("forecast_night", UncertainSpreads.ForecastAirK, "K"),
        Remembered("unknown_night", UncertainSpreads.UnknownAirK, "K"),
        Remembered("weighed_surface_water", SurfaceWaterAtLoading.WeighedError, "kg/kg"),
        Remembered("surface_water_beyond_leaf", SurfaceWaterAtLoading.BeyondLeafError, "kg/kg"),
        Remembered("unknown_surface_water", SurfaceWaterAtLoading.AssumedError, "kg/kg"),
        Remembered("least_surface_water", CarriedWater.LeastError, "kg/kg"),
        Remembered("oven_moisture", TissueMoistureAtLoading.OvenError, ModelConstant.MoisturePoints),
        Remembered("field_moisture", TissueMoistureAtLoading.FieldError, ModelConstant.MoisturePoints),
        Remembered("loss_on_the_way_share", FieldToTrough.RelativeError, "1"),
        new("input_error_weight", ModelTopic.Uncertainty, InputErrors.WeightShare, "1", CoefficientStatus.CommonPractice, "Common practice, no published source"),
        new("input_error_time", ModelTopic.Uncertainty, InputErrors.ClockHours, "h", CoefficientStatus.CommonPractice, "Common practice, no published source"),
    ];

    private static ModelConstant Of(string code, double value, string unit, CoefficientStatus status, string source) =>
        new(code, ModelTopic.Uncertainty, value, unit, status, source);

    private static ModelConstant Remembered(string code, double value, string unit) =>
        Of(code, value, unit, CoefficientStatus.FromMemory, Memory);
}
