namespace WitherAdvisor.Spells;

/// <summary>
/// Where a spell begins and where it ends. Leaving takes more than entering, so that one shower does not end a season
/// on paper. Starting values, common practice without a published source, to be learned per site.
/// </summary>
public sealed record SpellThresholds
{
    /// <summary>A wet spell begins at this rain in 72 h, mm.</summary>
    public double WetRainIn72HoursMm { get; init; } = 25;

    /// <summary>A wet spell also begins when rain on the leaf comes to this much, kg/kg; not within a dry windy spell.</summary>
    public double WetLeafKgPerKg { get; init; } = 0.05;

    /// <summary>A wet spell ends when rain in 72 h is below this, mm (half of what begins it) …</summary>
    public double WetEndsBelowRainIn72HoursMm { get; init; } = 12;

    /// <summary>… and rain on the leaf below this, kg/kg.</summary>
    public double WetEndsBelowLeafKgPerKg { get; init; } = 0.03;

    /// <summary>A dry windy spell begins below this K_s …</summary>
    public double DryStressBelow { get; init; } = 0.8;

    /// <summary>… with less than this rain in 10 days, mm …</summary>
    public double DryRainIn10DaysBelowMm { get; init; } = 5;

    /// <summary>… and drying power in the site's upper quarter, or above this where too little of it is known, kPa·m/s.</summary>
    /// <remarks>
    /// Derived: an ordinary day of 22 °C, 70 % and 2 m/s has 1.6, a dry windy one of 24 °C, 45 % and 4 m/s has 6.6;
    /// this is about the geometric mean of the two.
    /// </remarks>
    public double DryingPowerKPaMPerS { get; init; } = 3.0;

    /// <summary>A dry windy spell ends when K_s is above this …</summary>
    public double DryEndsAboveStress { get; init; } = 0.9;

    /// <summary>… or 10 days bring this much rain, mm …</summary>
    public double DryEndsAtRainIn10DaysMm { get; init; } = 20;

    /// <summary>… or drying power falls below this share of what begins it.</summary>
    public double DryEndsBelowPowerShare { get; init; } = 0.6;

    /// <summary>Days of the site's own history from which its upper quarter is taken.</summary>
    public int LeastDaysForOwnQuarter { get; init; } = 30;

    /// <summary>
    /// How far the upper quarter of a history may move the threshold from <see cref="DryingPowerKPaMPerS"/>, as a
    /// factor up or down: a few months are one season, and a quarter of a windy season is not a quarter of a year.
    /// </summary>
    public double MostOwnQuarterFactor { get; init; } = 1.5;
}
