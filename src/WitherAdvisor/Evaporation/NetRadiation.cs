namespace WitherAdvisor.Evaporation;

/// <summary>What a green surface keeps of the radiation, MJ/m².</summary>
/// <remarks>FAO-56 (Allen et al. 1998), ch. 3.</remarks>
public static class NetRadiation
{
    private const double Albedo = 0.23;
    private const double StefanBoltzmannMJPerK4M2Day = 4.903e-9;
    private const double FaoKelvinAtZeroC = 273.16;

    /// <summary>Least R_s/R_so.</summary>
    public const double LeastClearness = 0.3;

    /// <summary>R_ns: net shortwave (eq. 38).</summary>
    public static double Shortwave(double sunlight) => (1 - Albedo) * sunlight;

    /// <summary>
    /// R_s/R_so held within 0.3 to 1: below, the cloud term would turn round and dark wet days would miss by up to
    /// 0.36 mm.
    /// </summary>
    public static double Clearness(double sunlight, double clearSky) => Math.Clamp(sunlight / clearSky, LeastClearness, 1);

    /// <summary>R_nl: net longwave given off in a day, from its extremes in °C, vapour pressure in kPa and clearness (eq. 39).</summary>
    public static double LongwaveOfDay(double highestC, double lowestC, double vapourKPa, double clearness) =>
        StefanBoltzmannMJPerK4M2Day * (FourthPowerK(highestC) + FourthPowerK(lowestC)) / 2 * Sky(vapourKPa, clearness);

    /// <summary>R_nl of one hour, from its temperature in °C, vapour pressure in kPa and clearness (eq. 39, by the hour).</summary>
    public static double LongwaveOfHour(double temperatureC, double vapourKPa, double clearness) =>
        StefanBoltzmannMJPerK4M2Day / 24 * FourthPowerK(temperatureC) * Sky(vapourKPa, clearness);

    private static double Sky(double vapourKPa, double clearness) =>
        (0.34 - 0.14 * Math.Sqrt(vapourKPa)) * (1.35 * clearness - 0.35);

    private static double FourthPowerK(double temperatureC)
    {
        double squared = (temperatureC + FaoKelvinAtZeroC) * (temperatureC + FaoKelvinAtZeroC);
        return squared * squared;
    }
}
