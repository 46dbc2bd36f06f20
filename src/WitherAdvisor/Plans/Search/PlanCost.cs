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
    public const double PerChangeUnderWay = 1;

    /// <summary>A quarter of an hour either way is on time.</summary>
    private const double OnTimeHours = 0.25;

    /// <summary>
    /// Cost of leaving the site's wanted air, and of changing what people hold under way: known before anything is simulated.
    /// </summary>
    public static double OfAir(PlanProblem problem, double differenceK, double surfaceDifferenceK, double fanShare)
    {
        double away = differenceK - problem.Style.WantedHygrometricDifferenceK;
        return problem.ShareToGo
            * (PerSquaredKelvinFromWanted * away * away
                + PerKelvinOfSurfaceBoost * Math.Max(surfaceDifferenceK - differenceK, 0)
                + PerShareOfFanSlowed * (1 - fanShare))
            + OfChange(problem, differenceK, surfaceDifferenceK, fanShare);
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

    /// <summary>
    /// Less is left to gain the nearer the stop, and small gains would change the air at every look: people keep to a plan
    /// unless leaving it is worth as much as an hour.
    /// </summary>
    private static double OfChange(PlanProblem problem, double differenceK, double surfaceDifferenceK, double fanShare)
    {
        bool kept = problem.AirInHand is not { } inHand || inHand == (differenceK, surfaceDifferenceK, fanShare);
        return kept ? 0 : PerChangeUnderWay;
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
