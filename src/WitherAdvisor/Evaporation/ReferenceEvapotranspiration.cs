namespace WitherAdvisor.Evaporation;

/// <summary>ET_0: what short well-watered grass gives off, mm.</summary>
/// <remarks>FAO-56 (Allen et al. 1998), the Penman–Monteith equation, ch. 2 and 4.</remarks>
public static class ReferenceEvapotranspiration
{
    private const double MmPerMJ = 0.408;
    private const double WindTermOfDay = 900;
    private const double WindTermOfHour = 37;

    /// <summary>Of a day, mm, from its extremes (eq. 6).</summary>
    /// <param name="highestC">°C.</param>
    /// <param name="lowestC">°C.</param>
    /// <param name="vapourKPa">Actual vapour pressure, kPa.</param>
    /// <param name="windAtTwoMetresMPerS">m/s.</param>
    /// <param name="availableMJPerM2">Net radiation less heat into the soil, MJ/m².</param>
    /// <param name="pressureKPa">kPa.</param>
    public static double OfDayMm(
        double highestC, double lowestC, double vapourKPa, double windAtTwoMetresMPerS, double availableMJPerM2, double pressureKPa)
    {
        double meanC = (highestC + lowestC) / 2;

        // The curve is hollow: saturation at the mean temperature would be too low.
        double saturationKPa = (FaoAir.SaturationKPa(highestC) + FaoAir.SaturationKPa(lowestC)) / 2;
        double slope = FaoAir.SlopeKPaPerK(FaoAir.SaturationKPa(meanC), meanC);
        double gamma = FaoAir.PsychrometricConstantKPaPerK(pressureKPa);
        double wind = gamma * WindTermOfDay / (meanC + 273) * windAtTwoMetresMPerS * (saturationKPa - vapourKPa);
        return (MmPerMJ * slope * availableMJPerM2 + wind) / (slope + gamma * (1 + 0.34 * windAtTwoMetresMPerS));
    }

    /// <summary>Of an hour, mm (eq. 53).</summary>
    public static double OfHourMm(in HourOfAir hour) =>
        (MmPerMJ * hour.SlopeKPaPerK * (hour.NetRadiationMJPerM2 - SoilHeat(hour)) + WindTerm(hour))
        / (hour.SlopeKPaPerK + hour.PsychrometricConstantKPaPerK * (1 + 0.34 * hour.WindAtTwoMetresMPerS));

    /// <summary>
    /// Of an hour from leaf that is wet all over, mm: eq. 53 with no surface resistance and no heat into the soil,
    /// which the top of a canopy does not feel. Below 0 dew forms.
    /// </summary>
    public static double OfHourFromWetLeafMm(in HourOfAir hour) =>
        (MmPerMJ * hour.SlopeKPaPerK * hour.NetRadiationMJPerM2 + WindTerm(hour))
        / (hour.SlopeKPaPerK + hour.PsychrometricConstantKPaPerK);

    /// <summary>G: a tenth of net radiation by day, half by night (eq. 45 and 46).</summary>
    private static double SoilHeat(in HourOfAir hour) => (hour.IsDay ? 0.1 : 0.5) * hour.NetRadiationMJPerM2;

    private static double WindTerm(in HourOfAir hour) =>
        hour.PsychrometricConstantKPaPerK * WindTermOfHour / (hour.TemperatureC + 273)
        * hour.WindAtTwoMetresMPerS * hour.DeficitKPa;
}
