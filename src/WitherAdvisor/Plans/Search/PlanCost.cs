namespace WitherAdvisor.Plans.Search;

/// <summary>What a plan may be told by from another where both keep the limits, in points; an hour late is one.</summary>
/// <remarks>Weights: common practice, no published source. They say what is worth what, not what is possible.</remarks>
internal static class PlanCost
{
    public const double PerSquaredKelvinFromWanted = 0.25;
    public const double PerKelvinOfSurfaceBoost = 0.25;
    public const double PerShareOfFanSlowed = 2;
    public const double PerHourLate = 1;
    public const double PerHourEarly = 0.25;
    public const double PerChangeUnderWay = 1;

    /// <summary>A quarter of an hour after the wanted time is on time.</summary>
    private const double OnTimeHours = 0.25;

    public static double Of(PlanProblem problem, HeldAir air, double readyHour) =>
        problem.ShareToGo * OfAir(problem.WantedDifferenceK, air)
        + OfChange(problem, air)
        + OfTime(problem.ReadyByHour, readyHour);

    /// <summary>What leaving the site's wanted air costs.</summary>
    private static double OfAir(double wantedK, HeldAir air)
    {
        double away = air.DifferenceK - wantedK;
        return PerSquaredKelvinFromWanted * away * away
            + PerKelvinOfSurfaceBoost * Math.Max(air.SurfaceDifferenceK - air.DifferenceK, 0)
            + PerShareOfFanSlowed * (1 - air.FanShare * air.RunShare);
    }

    /// <summary>
    /// Less is left to gain the nearer the stop, and small gains would change the air at every look: people keep to a plan
    /// unless leaving it is worth as much as an hour.
    /// </summary>
    private static double OfChange(PlanProblem problem, HeldAir air) =>
        problem.AirInHand is not { } inHand || inHand == air ? 0 : PerChangeUnderWay;

    private static double OfTime(double? readyByHour, double readyHour) => readyByHour is { } readyBy
        ? PerHourLate * Math.Max(readyHour - readyBy - OnTimeHours, 0) + PerHourEarly * Math.Max(readyBy - readyHour - OnTimeHours, 0)
        : 0;
}
