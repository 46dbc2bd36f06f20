namespace WitherAdvisor.Spells;

/// <summary>Judges a spell day by day: where it stands depends on where it stood.</summary>
internal static class SpellJudgement
{
    /// <summary>The spell after one more day.</summary>
    public static SpellVerdict Next(SpellKind before, in SpellDay day, double powerThreshold, SpellThresholds thresholds)
    {
        if (day.RainIn72Hours.IsAtLeast(thresholds.WetRainIn72HoursMm))
        {
            return new(SpellKind.Wet, SpellReason.RainIn72Hours);
        }

        if (before == SpellKind.DryWindy && StaysDryWindy(day, powerThreshold, thresholds))
        {
            return new(SpellKind.DryWindy, SpellReason.DroughtAndWindStill);
        }

        if (BeginsDryWindy(day, powerThreshold, thresholds))
        {
            return new(SpellKind.DryWindy, SpellReason.DroughtAndWind);
        }

        return before == SpellKind.Wet ? AfterWet(day, thresholds) : AfterOrdinary(day, thresholds);
    }

    private static SpellVerdict AfterWet(in SpellDay day, SpellThresholds thresholds)
    {
        if (day.RainIn72Hours.IsAtLeast(thresholds.WetEndsBelowRainIn72HoursMm))
        {
            return new(SpellKind.Wet, SpellReason.RainIn72HoursStill);
        }

        return day.RainOnLeafKgPerKg >= thresholds.WetEndsBelowLeafKgPerKg
            ? new(SpellKind.Wet, SpellReason.RainOnLeafStill)
            : Ordinary(day);
    }

    private static SpellVerdict AfterOrdinary(in SpellDay day, SpellThresholds thresholds) =>
        day.RainOnLeafKgPerKg >= thresholds.WetLeafKgPerKg ? new(SpellKind.Wet, SpellReason.RainOnLeaf) : Ordinary(day);

    private static SpellVerdict Ordinary(in SpellDay day) =>
        new(SpellKind.Ordinary, day.RainIn72Hours.Mm is null ? SpellReason.TooLittleKnown : SpellReason.NoThresholdReached);

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
