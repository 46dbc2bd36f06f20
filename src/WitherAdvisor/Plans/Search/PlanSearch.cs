namespace WitherAdvisor.Plans.Search;

/// <summary>
/// Chooses a plan: candidates are tried in the order of what leaving the wanted air costs, until that alone costs more
/// than the best plan found. No cheaper plan of the grid is missed.
/// </summary>
internal sealed class PlanSearch
{
    private const double StepK = 0.4;

    private static readonly double[] SurfaceBoostsK = [0, 1.5, 3];

    private PlanSearch(CandidateTrial trial, Candidate? best, Candidate? nearest)
    {
        Trial = trial;
        Best = best;
        Nearest = nearest;
    }

    public CandidateTrial Trial { get; }

    /// <summary>The cheapest plan within every hard limit; null where there is none.</summary>
    public Candidate? Best { get; }

    /// <summary>The cheapest that breaks a limit; null where <see cref="Best"/> is not.</summary>
    public Candidate? Nearest { get; }

    public static PlanSearch Run(PlanProblem problem)
    {
        var trial = new CandidateTrial(problem);
        Candidate? best = null;
        Candidate? nearest = null;
        foreach (PlannedAir air in ByCost(problem))
        {
            if (best is not null && air.Cost >= best.Cost)
            {
                break;
            }

            Candidate candidate = trial.Try(air.DifferenceK, air.SurfaceDifferenceK, air.FanShare);
            if (candidate.Broken is null && (best is null || candidate.Cost < best.Cost))
            {
                best = candidate;
            }
            else if (candidate.Broken is not null && (nearest is null || candidate.Cost < nearest.Cost))
            {
                nearest = candidate;
            }
        }

        return new(trial, best, best is null ? nearest : null);
    }

    private static List<PlannedAir> ByCost(PlanProblem problem)
    {
        var airs = new List<PlannedAir>();
        foreach (double differenceK in Differences(problem))
        {
            foreach (double surfaceK in SurfaceDifferences(problem, differenceK))
            {
                foreach (double fanShare in FanShares(problem.Trough.SlowestFanShare))
                {
                    airs.Add(new(
                        differenceK, surfaceK, fanShare, PlanCost.OfAir(problem, differenceK, surfaceK, fanShare)));
                }
            }
        }

        if (problem.AirInHand is { } held && !airs.Exists(air => (air.DifferenceK, air.SurfaceDifferenceK, air.FanShare) == held))
        {
            airs.Add(new(
                held.DifferenceK, held.SurfaceDifferenceK, held.FanShare,
                PlanCost.OfAir(problem, held.DifferenceK, held.SurfaceDifferenceK, held.FanShare)));
        }

        airs.Sort((one, other) => one.Cost.CompareTo(other.Cost));
        return airs;
    }

    /// <summary>From no heat at all to the ceiling, the wanted difference among them; once the leaf cools, no heat.</summary>
    private static List<double> Differences(PlanProblem problem)
    {
        if (problem.Start.Stage == StageKind.Cooling)
        {
            return [0];
        }

        double ceiling = problem.Style.HygrometricDifferenceCeilingK;
        double wanted = Math.Min(problem.Style.WantedHygrometricDifferenceK, ceiling);
        var differences = new List<double> { 0, ceiling };
        for (double k = wanted; k > 0; k -= StepK)
        {
            differences.Add(k);
        }

        for (double k = wanted + StepK; k < ceiling; k += StepK)
        {
            differences.Add(k);
        }

        return differences;
    }

    private static IEnumerable<double> SurfaceDifferences(PlanProblem problem, double differenceK)
    {
        double ceiling = HardLimits.DifferenceCeilingK(problem.Style, 0, double.PositiveInfinity);
        bool wet = problem.IsInSurfaceStage;
        return SurfaceBoostsK.Where(boost => boost == 0 || (wet && differenceK + boost <= ceiling)).Select(boost => differenceK + boost);
    }

    private static double[] FanShares(double slowest) => slowest < 1 ? [1, (1 + slowest) / 2, slowest] : [1];

    private sealed record PlannedAir(double DifferenceK, double SurfaceDifferenceK, double FanShare, double Cost);
}
