namespace WitherAdvisor.WeatherFeeds.Screening;

/// <summary>Along a great circle.</summary>
internal static class Distance
{
    /// <summary>Mean radius of the earth, km (IUGG).</summary>
    private const double EarthRadiusKm = 6_371.0088;

    /// <summary>In km between two places in degrees north and east; the haversine formula (Sinnott 1984).</summary>
    public static double Km(double northDeg, double eastDeg, double otherNorthDeg, double otherEastDeg)
    {
        double north = Math.Pow(Math.Sin(Radians(otherNorthDeg - northDeg) / 2), 2);
        double east = Math.Pow(Math.Sin(Radians(otherEastDeg - eastDeg) / 2), 2);
        double chord = north + Math.Cos(Radians(northDeg)) * Math.Cos(Radians(otherNorthDeg)) * east;
        return 2 * EarthRadiusKm * Math.Asin(Math.Min(1, Math.Sqrt(chord)));
    }

    private static double Radians(double degrees) => degrees * Math.PI / 180;
}
