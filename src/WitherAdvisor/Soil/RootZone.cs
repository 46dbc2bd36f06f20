namespace WitherAdvisor.Soil;

/// <summary>The soil a crop draws on and how it draws.</summary>
/// <param name="TotalAvailableMm">TAW: water between field capacity and wilting, mm.</param>
/// <param name="DepletionFraction">p: share of it taken without stress when the crop gives off 5 mm a day.</param>
/// <param name="CropCoefficient">K_c.</param>
/// <param name="AdjustsDepletionFraction">Whether p moves with the day's demand (FAO-56, ch. 8, note to table 22).</param>
/// <remarks>FAO-56 (Allen et al. 1998), ch. 8. Runoff and capillary rise are left out: nothing is known of either.</remarks>
public sealed record RootZone(
    double TotalAvailableMm,
    double DepletionFraction,
    double CropCoefficient,
    bool AdjustsDepletionFraction = true)
{
    private const double DemandOfTableMm = 5;

    /// <summary>
    /// Tea without shade: K_c 1.00 (table 12, mid and late season) and p 0.40 (table 22); 170 mm over 1.2 m of
    /// roots (table 22: 0.9 to 1.5 m) at the 0.14 m³/m³ of a loam (table 19, from memory).
    /// </summary>
    public static RootZone Tea { get; } = new(170, 0.40, 1.00);

    /// <summary>TAW, mm, from water at field capacity and at wilting (m³/m³) over a depth of roots in m (eq. 82).</summary>
    public static double TotalAvailable(double atFieldCapacity, double atWilting, double rootDepthM) =>
        1000 * (atFieldCapacity - atWilting) * rootDepthM;

    /// <summary>RAW: water taken without stress on a day of a crop's demand in mm (eq. 83).</summary>
    public double ReadilyAvailableMm(double demandMm) => FractionOn(demandMm) * TotalAvailableMm;

    /// <summary>K_s: share of its demand (mm a day) that the crop gets at a depletion in mm, 0 to 1 (eq. 84).</summary>
    public double Stress(double depletionMm, double demandMm) =>
        Math.Clamp((TotalAvailableMm - depletionMm) / (TotalAvailableMm - ReadilyAvailableMm(demandMm)), 0, 1);

    /// <summary>A day: from the depletion it begins with, its rain and its reference evapotranspiration, all mm (eq. 85 and 88).</summary>
    public RootZoneDay Day(double depletionMm, double rainMm, double referenceMm)
    {
        double demandMm = CropCoefficient * referenceMm;
        double stress = Stress(depletionMm, demandMm);
        double givenOffMm = stress * demandMm;
        double balanceMm = depletionMm - rainMm + givenOffMm;
        return new(Math.Clamp(balanceMm, 0, TotalAvailableMm), stress, givenOffMm, Math.Max(-balanceMm, 0));
    }

    private double FractionOn(double demandMm) => AdjustsDepletionFraction
        ? Math.Clamp(DepletionFraction + 0.04 * (DemandOfTableMm - demandMm), 0.1, 0.8)
        : DepletionFraction;
}
