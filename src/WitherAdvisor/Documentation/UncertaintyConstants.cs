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
        Of("cases", "Cases that the plan is run over", Ensemble.Members, "", CoefficientStatus.Definition, "A lattice of 7 by 7 points without its middle"),
        Remembered("held_air", "Held hygrometric difference, missed: as K of plenum dry bulb, mean of a night", UncertainSpreads.HeldAirK, "K"),
        Remembered("foretold_night", "The night's air in hours without heat, where it is foretold", UncertainSpreads.ForetoldAirK, "K"),
        Remembered("unknown_night", "The same where the day before is taken for it", UncertainSpreads.UnknownAirK, "K"),
        Remembered("weighed_surface_water", "Water on the leaf, weighed", SurfaceWaterAtLoading.WeighedError, "kg/kg"),
        Remembered("unknown_surface_water", "Water on the leaf, where nothing tells of it", SurfaceWaterAtLoading.AssumedError, "kg/kg"),
        Remembered("least_surface_water", "Water on the leaf from the weather, at least", CarriedWater.LeastError, "kg/kg"),
        Remembered("oven_moisture", "Moisture in the leaf, oven-dried, wet basis", TissueMoistureAtLoading.OvenError, ModelConstant.MoisturePoints),
        Remembered("field_moisture", "Moisture in the leaf, one field and another, wet basis", TissueMoistureAtLoading.FieldError, ModelConstant.MoisturePoints),
        Remembered("loss_on_the_way_share", "Loss between plucking and trough, as a share of it", FieldToTrough.RelativeError, "1"),
        new("misjudged_weight", ModelTopic.Uncertainty, "Green weight misjudged, in the pictures only", MisjudgedBars.WeightShare, "1", CoefficientStatus.CommonPractice, "Common practice, no published source"),
        new("misjudged_time", ModelTopic.Uncertainty, "Plucking or loading misjudged, in the pictures only", MisjudgedBars.ClockHours, "h", CoefficientStatus.CommonPractice, "Common practice, no published source"),
    ];

    private static ModelConstant Of(string code, string meaning, double value, string unit, CoefficientStatus status, string source) =>
        new(code, ModelTopic.Uncertainty, meaning, value, unit, status, source);

    private static ModelConstant Remembered(string code, string meaning, double value, string unit) =>
        Of(code, meaning + " (standard deviation)", value, unit, CoefficientStatus.FromMemory, Memory);
}
