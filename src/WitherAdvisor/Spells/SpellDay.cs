namespace WitherAdvisor.Spells;

/// <summary>What a spell is judged by, as it stands at the end of a day.</summary>
/// <param name="RainIn72Hours">Rain of the last 72 h.</param>
/// <param name="RainIn10Days">Rain of the last 240 h.</param>
/// <param name="Stress">K_s.</param>
/// <param name="RainOnLeafKgPerKg">What plucked leaf would carry of it; dew is no sign of a wet spell.</param>
/// <param name="DryingPowerKPaMPerS">Mean daytime vapour-pressure deficit times wind of three days; null where unknown.</param>
internal readonly record struct SpellDay(
    RainSum RainIn72Hours,
    RainSum RainIn10Days,
    double Stress,
    double RainOnLeafKgPerKg,
    double? DryingPowerKPaMPerS);
