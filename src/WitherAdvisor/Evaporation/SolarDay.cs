namespace WitherAdvisor.Evaporation;

/// <summary>The sun's course over one day of the year at one latitude.</summary>
/// <param name="InverseDistance">d_r: inverse relative distance from earth to sun (eq. 23).</param>
/// <param name="DeclinationRad">δ (eq. 24).</param>
/// <param name="SunsetAngleRad">ω_s; 0 where the sun does not rise, π where it does not set (eq. 25).</param>
/// <param name="SeasonalCorrectionH">S_c: solar time ahead of mean time, hours (eq. 32).</param>
/// <param name="SineProduct">sin φ sin δ, of latitude and declination.</param>
/// <param name="CosineProduct">cos φ cos δ.</param>
/// <remarks>Equations of FAO-56 (Allen et al. 1998), ch. 3.</remarks>
public readonly record struct SolarDay(
    double InverseDistance,
    double DeclinationRad,
    double SunsetAngleRad,
    double SeasonalCorrectionH,
    double SineProduct,
    double CosineProduct)
{
    private const double SolarConstantMJPerM2Min = 0.0820;

    /// <summary>N: daylight, hours (eq. 34).</summary>
    public double DaylightH => 24 / Math.PI * SunsetAngleRad;

    /// <summary>R_a: radiation outside the atmosphere over the whole day, MJ/m² (eq. 21).</summary>
    public double RadiationMJPerM2 => RadiationBetweenMJPerM2(-SunsetAngleRad, SunsetAngleRad);

    /// <summary>The day of a number in the year (1 to 366) at a latitude in degrees north.</summary>
    public static SolarDay Of(int dayOfYear, double latitudeDeg)
    {
        double latitude = latitudeDeg * Math.PI / 180;
        double year = 2 * Math.PI / 365 * dayOfYear;
        double declination = 0.409 * Math.Sin(year - 1.39);
        double sunset = Math.Acos(Math.Clamp(-Math.Tan(latitude) * Math.Tan(declination), -1, 1));
        double b = 2 * Math.PI * (dayOfYear - 81) / 364;
        double correction = 0.1645 * Math.Sin(2 * b) - 0.1255 * Math.Cos(b) - 0.025 * Math.Sin(b);
        return new(
            1 + 0.033 * Math.Cos(year),
            declination,
            sunset,
            correction,
            Math.Sin(latitude) * Math.Sin(declination),
            Math.Cos(latitude) * Math.Cos(declination));
    }

    /// <summary>ω: the sun's hour angle in radians, −π to π, at a clock time in UTC hours and a longitude in degrees east (eq. 31).</summary>
    public double HourAngleRad(double utcHour, double longitudeDeg) =>
        Math.IEEERemainder(Math.PI / 12 * (utcHour + longitudeDeg / 15 + SeasonalCorrectionH - 12), 2 * Math.PI);

    /// <summary>R_a of a stretch of the day, MJ/m², between two hour angles in radians; nothing below the horizon (eq. 28).</summary>
    public double RadiationBetweenMJPerM2(double fromRad, double toRad)
    {
        double from = Math.Max(fromRad, -SunsetAngleRad);
        double to = Math.Min(toRad, SunsetAngleRad);
        if (to <= from)
        {
            return 0;
        }

        double height = (to - from) * SineProduct + CosineProduct * (Math.Sin(to) - Math.Sin(from));
        return Math.Max(12 * 60 / Math.PI * SolarConstantMJPerM2Min * InverseDistance * height, 0);
    }
}
