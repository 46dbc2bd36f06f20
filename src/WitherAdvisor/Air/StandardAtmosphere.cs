namespace WitherAdvisor.Air;

/// <summary>Pressure by elevation where no station pressure is known.</summary>
public static class StandardAtmosphere
{
    public const double SeaLevelPressurePa = 101_325;

    /// <summary>Pressure in Pa at an elevation in m above sea level.</summary>
    /// <remarks>ASHRAE Handbook – Fundamentals 2017 (SI), ch. 1, eq. 3; valid from −5,000 to 11,000 m.</remarks>
    public static double PressurePa(double elevationM) =>
        SeaLevelPressurePa * Math.Pow(1 - 2.25577e-5 * elevationM, 5.2559);
}
