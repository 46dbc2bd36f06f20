using WitherAdvisor.Leaf;
using WitherAdvisor.LeafAtLoading;
using WitherAdvisor.Spells;

namespace WitherAdvisor.Loft.Records.Sent;

/// <summary>The leaf and the spell of an answer.</summary>
internal static class SentLeaf
{
    public static LeafEstimate Read(SentFields answer, LeafEstimate? digits)
    {
        SentFields leaf = answer.Object("leaf");
        return new(
            SurfaceWater(leaf.Object("surface_water"), digits?.SurfaceWaterKgPerKg),
            TissueMoisture(leaf.Object("tissue_moisture"), digits?.TissueMoistureWetBasis),
            Spell(answer.Object("spell"), digits?.Spell),
            SentAdvice.Assumptions(leaf.List("missing"), digits?.Missing));
    }

    private static Estimate SurfaceWater(SentFields estimate, Estimate? digits) => new(
        estimate.Number("value_kg_per_kg", 4, digits?.Value),
        estimate.Number("standard_deviation_kg_per_kg", 4, digits?.StandardDeviation),
        estimate.Word<EstimateOrigin>("origin"),
        SentAdvice.Beside<Contribution>(
            estimate.List("contributions"), digits?.Contributions,
            (piece, exact) => new(piece.Text("code"), piece.Number("amount_kg_per_kg", 4, exact?.Amount))));

    private static Estimate TissueMoisture(SentFields estimate, Estimate? digits) => new(
        estimate.Fraction("value_wet_basis_percent", digits?.Value),
        estimate.Fraction("standard_deviation_points", digits?.StandardDeviation),
        estimate.Word<EstimateOrigin>("origin"),
        SentAdvice.Beside<Contribution>(
            estimate.List("contributions"), digits?.Contributions,
            (piece, exact) => new(piece.Text("code"), piece.Fraction("amount_points", exact?.Amount))));

    private static Spell Spell(SentFields spell, Spell? digits) => new(
        spell.Word<SpellKind>("kind"),
        spell.NumberOrNull("rain_last_three_days_mm", 2, digits?.RainLast72HoursMm),
        spell.NumberOrNull("rain_last_ten_days_mm", 2, digits?.RainLast10DaysMm),
        spell.NumberOrNull("water_stress_fraction", 3, digits?.WaterStress),
        spell.NumberOrNull("water_stress_standard_deviation_fraction", 3, digits?.WaterStressStandardDeviation),
        spell.NumberOrNull("drying_power_kpa_m_per_s", 2, digits?.DryingPowerKPaMPerS),
        spell.Number("drying_power_threshold_kpa_m_per_s", 2, digits?.DryingPowerThresholdKPaMPerS));
}
