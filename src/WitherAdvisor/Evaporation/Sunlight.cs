namespace WitherAdvisor.Evaporation;

/// <summary>What of the radiation outside the atmosphere (R_a) reaches the ground, in the unit R_a comes in.</summary>
/// <remarks>FAO-56 (Allen et al. 1998), ch. 3.</remarks>
public static class Sunlight
{
    private const double OvercastShare = 0.25;
    private const double SunshineShare = 0.50;

    /// <summary>k_Rs of places inland, K^−½ (eq. 50).</summary>
    private const double InlandPerRootK = 0.16;

    /// <summary>R_so: under a clear sky, at an elevation in m (eq. 37).</summary>
    public static double ClearSky(double outside, double elevationM) => (0.75 + 2e-5 * elevationM) * outside;

    /// <summary>R_s from sunshine and daylight in hours (eq. 35, Ångström).</summary>
    public static double FromSunshine(double outside, double sunshineH, double daylightH) =>
        (OvercastShare + SunshineShare * sunshineH / daylightH) * outside;

    /// <summary>R_s without any sunshine: diffuse light only (eq. 35).</summary>
    public static double Overcast(double outside) => OvercastShare * outside;

    /// <summary>R_s from a day's range of temperature in K, never above a clear sky's (eq. 50, Hargreaves).</summary>
    public static double FromTemperatureRange(double outside, double rangeK, double elevationM) =>
        Math.Min(InlandPerRootK * Math.Sqrt(Math.Max(rangeK, 0)) * outside, ClearSky(outside, elevationM));
}
