namespace WitherAdvisor.Weather.Spells;

/// <summary>Judges a spell day by day: where it stands depends on where it stood.</summary>
internal static class SpellJudgement
{
    /// <summary>The spell after one more day.</summary>
    public static SpellKind Next(SpellKind before, in SpellDay day, double powerThreshold, SpellThresholds thresholds)
    {
        if (day.RainIn72Hours.IsAtLeast(thresholds.WetRainIn72HoursMm))
        {
            return SpellKind.Wet;
        }

        if (before == SpellKind.DryWindy && StaysDryWindy(day, powerThreshold, thresholds))
        {
            return SpellKind.DryWindy;
        }

        if (BeginsDryWindy(day, powerThreshold, thresholds))
        {
            return SpellKind.DryWindy;
        }

        double leafKgPerKg = before == SpellKind.Wet ? thresholds.WetEndsBelowLeafKgPerKg : thresholds.WetLeafKgPerKg;
        bool stillWet = before == SpellKind.Wet && day.RainIn72Hours.IsAtLeast(thresholds.WetEndsBelowRainIn72HoursMm);
        return stillWet || day.RainOnLeafKgPerKg >= leafKgPerKg ? SpellKind.Wet : SpellKind.Ordinary;
    }

    private static bool BeginsDryWindy(in SpellDay day, double powerThreshold, SpellThresholds thresholds) =>
        day.Stress < thresholds.DryStressBelow
        && day.RainIn10Days.IsBelow(thresholds.DryRainIn10DaysBelowMm)
        && day.DryingPowerKPaMPerS >= powerThreshold;

    /// <summary>A day without wind readings neither ends nor begins a season.</summary>
    private static bool StaysDryWindy(in SpellDay day, double powerThreshold, SpellThresholds thresholds) =>
        day.Stress <= thresholds.DryEndsAboveStress
        && !day.RainIn10Days.IsAtLeast(thresholds.DryEndsAtRainIn10DaysMm)
        && !(day.DryingPowerKPaMPerS < thresholds.DryEndsBelowPowerShare * powerThreshold);
}
