namespace WitherAdvisor.Soil;

/// <summary>What a day did to the root zone.</summary>
/// <param name="DepletionMm">D_r at its end: water short of field capacity, mm.</param>
/// <param name="Stress">K_s over the day, 0 to 1.</param>
/// <param name="GivenOffMm">Water the crop gave off, mm.</param>
/// <param name="DrainedMm">DP: water lost below the roots, mm.</param>
public readonly record struct RootZoneDay(double DepletionMm, double Stress, double GivenOffMm, double DrainedMm);
