namespace WitherAdvisor.Spells;

/// <summary>Which rule decided a day's spell; its threshold stands in <see cref="SpellThresholds"/>.</summary>
public enum SpellReason
{
    /// <summary>Ordinary: no other rule held.</summary>
    NoThresholdReached,

    /// <summary>Not known: rain of too many of the last 72 h is, and what is known reaches no threshold.</summary>
    TooLittleKnown,

    /// <summary>Wet: rain of 72 h reached <see cref="SpellThresholds.WetRainIn72HoursMm"/>.</summary>
    RainIn72Hours,

    /// <summary>Wet: rain on the leaf reached <see cref="SpellThresholds.WetLeafKgPerKg"/>.</summary>
    RainOnLeaf,

    /// <summary>Wet still: rain of 72 h is not below <see cref="SpellThresholds.WetEndsBelowRainIn72HoursMm"/>.</summary>
    RainIn72HoursStill,

    /// <summary>Wet still: rain on the leaf is not below <see cref="SpellThresholds.WetEndsBelowLeafKgPerKg"/>.</summary>
    RainOnLeafStill,

    /// <summary>Dry windy: drought, no rain to speak of and strong drying air.</summary>
    DroughtAndWind,

    /// <summary>Dry windy still: none of what ends the season has come.</summary>
    DroughtAndWindStill,
}
