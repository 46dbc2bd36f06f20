using WitherAdvisor.Canopy;
using WitherAdvisor.Evaporation;
using WitherAdvisor.Soil;

namespace WitherAdvisor.Spells;

/// <summary>Follows the spell through the days of a history to the one the leaf was plucked on.</summary>
internal static class SpellHistory
{
    private const int HoursInDay = 24;
    private const int ShortStretchH = 72;
    private const int LongStretchH = 240;

    /// <summary>The spell at the end of the history.</summary>
    public static Spell Of(
        LeafHistory history,
        WaterStressHistory stress,
        InterceptionStorage canopy,
        double kgPerKgPerMm,
        SpellThresholds thresholds) =>
        Days(history, stress, canopy, kgPerKgPerMm, thresholds)[^1].ToSpell(stress.LastError);

    /// <summary>Every day of the history: the spell of one depends on the one before.</summary>
    public static JudgedDay[] Days(
        LeafHistory history,
        WaterStressHistory stress,
        InterceptionStorage canopy,
        double kgPerKgPerMm,
        SpellThresholds thresholds)
    {
        DryingPower power = DryingPower.Of(history.Demand);
        double threshold = power.Threshold(thresholds);
        SpellKind kind = SpellKind.Ordinary;
        var judged = new JudgedDay[history.Hours / HoursInDay];
        for (int day = 0; day < judged.Length; day++)
        {
            int end = (day + 1) * HoursInDay;
            SpellDay today = new(
                RainSum.UpTo(history.Series.Rain, end, ShortStretchH),
                RainSum.UpTo(history.Series.Rain, end, LongStretchH),
                stress.Mean[day],
                kgPerKgPerMm * (day == judged.Length - 1 ? canopy.RainMm : canopy.Best.RainMm[end]),
                power.MeanUpTo(day));
            SpellVerdict verdict = SpellJudgement.Next(kind, today, threshold, thresholds);
            kind = verdict.Kind;
            judged[day] = new(today, verdict, threshold);
        }

        return judged;
    }
}
