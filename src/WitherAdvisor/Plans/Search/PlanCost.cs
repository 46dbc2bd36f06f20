namespace WitherAdvisor.Plans.Search;

/// <summary>The soft terms of a plan, in common points. None is below 0, so leaving the wanted air bounds the cost from below.</summary>
/// <remarks>Weights: common practice, no published source. They say what is worth what, not what is possible.</remarks>
internal static class PlanCost
{
    public const double PerSquaredKelvinFromWanted = 0.25;
    public const double PerKelvinOfSurfaceBoost = 0.25;
    public const double PerShareOfFanSlowed = 2;
    public const double PerHourLate = 1;
    public const double PerHourEarly = 0.25;
    public const double PerPointOffTarget = 1;
    public const double PerPointOverTheSpread = 2;
    public const double PerKWhPerKg = 0.1;
    public const double PerTurn = 0.005;

    /// <summary>A quarter of an hour either way is on time.</summary>
    private const double OnTimeHours = 0.25;

    /// <summary>Cost of leaving the site's wanted air: known before anything is simulated.</summary>
    public static double OfAir(PlanProblem problem, double differenceK, double surfaceDifferenceK, double fanShare)
    {
        double away = differenceK - problem.Style.WantedHygrometricDifferenceK;
        return PerSquaredKelvinFromWanted * away * away
            + PerKelvinOfSurfaceBoost * Math.Max(surfaceDifferenceK - differenceK, 0)
            + PerShareOfFanSlowed * (1 - fanShare);
    }

    /// <summary>Cost of what a plan comes to.</summary>
    public static double OfResult(
        PlanProblem problem, double stopHour, double finalMoistureWetBasis, double spreadWetBasis, double heatKWhPerM2, int turns)
    {
        double offTarget = 100 * Math.Abs(finalMoistureWetBasis - problem.Style.TargetMoistureWetBasis);
        double overSpread = 100 * Math.Max(spreadWetBasis - problem.Style.ToleratedSpreadWetBasis, 0);
        return PerPointOffTarget * offTarget
            + PerPointOverTheSpread * overSpread
            + OfTime(problem.ReadyByHour, stopHour)
            + PerKWhPerKg * heatKWhPerM2 / problem.LoadKgPerM2
            + PerTurn * turns;
    }

    private static double OfTime(double? readyByHour, double stopHour)
    {
        if (readyByHour is not { } readyBy)
        {
            return 0;
        }

        double late = stopHour - readyBy;
        return late > 0
            ? PerHourLate * Math.Max(late - OnTimeHours, 0)
            : PerHourEarly * Math.Max(-late - OnTimeHours, 0);
    }
}
