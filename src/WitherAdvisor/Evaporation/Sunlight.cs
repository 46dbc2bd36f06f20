namespace WitherAdvisor.Evaporation;

/// <summary>What of the radiation outside the atmosphere (R_a) reaches the ground, in the unit R_a comes in.</summary>
/// <remarks>FAO-56 (Allen et al. 1998), ch. 3.</remarks>
public static class Sunlight
{
    private const double OvercastShare = 0.25;
    private const double SunshineShare = 0.50;

    /// <summary>k_Rs of places inland and by the coast, K^−½ (eq. 50).</summary>
    public const double InlandPerRootK = 0.16;
    public const double CoastPerRootK = 0.19;

    /// <summary>Half-way, where nobody said which of the two a place is; what it may miss by is in the error of guessed radiation.</summary>
    public const double UnknownPerRootK = (InlandPerRootK + CoastPerRootK) / 2;

    /// <summary>R_so: under a clear sky, at an elevation in m (eq. 37).</summary>
    public static double ClearSky(double outside, double elevationM) => (0.75 + 2e-5 * elevationM) * outside;

    /// <summary>R_s from sunshine and daylight in hours (eq. 35, Ångström).</summary>
    public static double FromSunshine(double outside, double sunshineH, double daylightH) =>
        (OvercastShare + SunshineShare * sunshineH / daylightH) * outside;

    /// <summary>R_s without any sunshine: diffuse light only (eq. 35).</summary>
    public static double Overcast(double outside) => OvercastShare * outside;

    /// <summary>R_s from a day's range of temperature in K, never above a clear sky's (eq. 50, Hargreaves).</summary>
    public static double FromTemperatureRange(double outside, double rangeK, double elevationM, double perRootK = InlandPerRootK) =>
        Math.Min(perRootK * Math.Sqrt(Math.Max(rangeK, 0)) * outside, ClearSky(outside, elevationM));
}
