using WitherAdvisor.Spells;

namespace WitherAdvisor.Tests.Review;

/// <summary>Thresholds of spells as a table's rows, each with why it is what it is: common practice or derived, none published.</summary>
internal static class ThresholdReasons
{
    public static IEnumerable<string> Rows(SpellThresholds thresholds) =>
    [
        $"wet begins   rain in 72 h >= {thresholds.WetRainIn72HoursMm} mm   about what fills the canopy on each of three days; practice calls that a wet spell",
        $"             or rain on leaf >= {thresholds.WetLeafKgPerKg} kg/kg   light rain leaves 5 to 15 % of leaf weight on it (practice)",
        $"wet ends     rain in 72 h < {thresholds.WetEndsBelowRainIn72HoursMm} mm   half of what begins it, so that one dry day ends nothing",
        $"             and rain on leaf < {thresholds.WetEndsBelowLeafKgPerKg} kg/kg   a hand no longer feels it as damp",
        $"dry begins   K_s < {thresholds.DryStressBelow}   a fifth of the water wanted is missing (FAO-56's K_s)",
        $"             and rain in 10 days < {thresholds.DryRainIn10DaysBelowMm} mm   less than two days' evapotranspiration",
        $"             and drying power >= upper quarter of the site, near {thresholds.DryingPowerKPaMPerS} kPa m/s   geometric mean of an ordinary and a dry windy day",
        $"dry ends     K_s > {thresholds.DryEndsAboveStress}   the soil has water again",
        $"             or rain in 10 days >= {thresholds.DryEndsAtRainIn10DaysMm} mm   more than a shower",
        $"             or drying power < {thresholds.DryEndsBelowPowerShare} of its threshold   the wind has gone",
    ];
}
