using WitherAdvisor.Weather.Canopy;
using WitherAdvisor.Weather.Soil;

namespace WitherAdvisor.Weather.Spells;

/// <summary>Follows the spell through the days of a history to the one the leaf was plucked on.</summary>
internal static class SpellHistory
{
    private const int HoursInDay = 24;
    private const int ShortStretchH = 72;
    private const int LongStretchH = 240;

    public static Spell Of(
        LeafHistory history,
        WaterStressHistory stress,
        CanopyWater canopy,
        double kgPerKgPerMm,
        SpellThresholds thresholds)
    {
        DryingPower power = DryingPower.Of(history.Demand);
        double threshold = power.Threshold(thresholds);
        SpellKind kind = SpellKind.Ordinary;
        SpellDay today = default;
        int days = history.Hours / HoursInDay;
        for (int day = 0; day < days; day++)
        {
            int end = (day + 1) * HoursInDay;
            today = new(
                RainSum.UpTo(history.Series.Rain, end, ShortStretchH),
                RainSum.UpTo(history.Series.Rain, end, LongStretchH),
                stress.Mean[day],
                day == days - 1 ? kgPerKgPerMm * canopy.RainMm : kgPerKgPerMm * canopy.Best.RainMm[end],
                power.MeanUpTo(day));
            kind = SpellJudgement.Next(kind, today, threshold, thresholds);
        }

        return new(
            kind,
            today.RainIn72Hours.Mm,
            today.RainIn10Days.Mm,
            today.Stress,
            stress.LastError,
            today.DryingPowerKPaMPerS,
            threshold);
    }
}
