namespace WitherAdvisor.Spells;

/// <summary>A day of a history with what it was judged by.</summary>
/// <param name="Numbers">As they stand at its end.</param>
/// <param name="Verdict">What they came to.</param>
/// <param name="PowerThreshold">What drying power was held against, kPa·m/s.</param>
internal readonly record struct JudgedDay(SpellDay Numbers, SpellVerdict Verdict, double PowerThreshold)
{
    /// <summary>As it is told.</summary>
    /// <param name="stressError">Standard deviation of the day's K_s.</param>
    public Spell ToSpell(double stressError) => new(
        Verdict.Kind,
        Numbers.RainIn72Hours.Mm,
        Numbers.RainIn10Days.Mm,
        Numbers.Stress,
        stressError,
        Numbers.DryingPowerKPaMPerS,
        PowerThreshold);
}
