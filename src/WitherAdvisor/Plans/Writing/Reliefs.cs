using WitherAdvisor.Ambient;
using WitherAdvisor.Plans.Search;

namespace WitherAdvisor.Plans.Writing;

/// <summary>What would make a plan possible, or meet a wish: each tried by the same search.</summary>
internal static class Reliefs
{
    private static readonly double[] ThinnerShares = [0.85, 0.7, 0.55, 0.4];
    private static readonly double[] ThickerShares = [1.15, 1.3, 1.5];
    private const int MostHoursLater = 12;

    /// <summary>Reliefs for a problem that no plan satisfies; leaf on the trough is neither loaded later nor spread thicker.</summary>
    public static IReadOnlyList<Relief> ForNoPlan(PlanProblem problem, LimitKind binding) => binding switch
    {
        LimitKind.LongestTimeSincePlucking => Thinner(problem, search => search.Best is not null),
        _ when problem.Start.IsUnderWay && binding != LimitKind.LongestTimeSincePlucking => [],
        LimitKind.ShortestTimeSincePlucking => [.. Thicker(problem), .. Later(problem)],
        LimitKind.PlenumDryBulb or LimitKind.HygrometricDifference => Later(problem),
        _ => [],
    };

    /// <summary>Reliefs for a plan that cannot be ready when rolling wants it.</summary>
    public static IReadOnlyList<Relief> ForLate(PlanProblem problem, double readyByHour, double stopHour) =>
    [
        .. Thinner(problem, search => search.Best is { } best && best.StopHour <= readyByHour + 0.25),
        .. problem.Start.IsUnderWay ? Array.Empty<Relief>() : [new(ReliefKind.StartEarlier, stopHour - readyByHour)],
        new(ReliefKind.RollLater, stopHour - readyByHour),
    ];

    private static IReadOnlyList<Relief> Thinner(PlanProblem problem, Func<PlanSearch, bool> relieves)
    {
        foreach (double share in ThinnerShares)
        {
            double load = problem.LoadKgPerM2 * share;
            if (relieves(PlanSearch.Run(problem with { LoadKgPerM2 = load })))
            {
                return [new(ReliefKind.SpreadThinner, load)];
            }
        }

        return [];
    }

    private static IReadOnlyList<Relief> Thicker(PlanProblem problem)
    {
        foreach (double share in ThickerShares)
        {
            double load = problem.LoadKgPerM2 * share;
            if (load <= problem.Trough.MostLoadKgPerM2 && PlanSearch.Run(problem with { LoadKgPerM2 = load }).Best is not null)
            {
                return [new(ReliefKind.SpreadThicker, load)];
            }
        }

        return [];
    }

    private static IReadOnlyList<Relief> Later(PlanProblem problem)
    {
        for (int hour = 1; hour <= MostHoursLater && hour < problem.LongestHours - 1; hour++)
        {
            PlanProblem later = problem with
            {
                Ambient = problem.Ambient.From(hour),
                ShortestHours = problem.ShortestHours - hour,
                LongestHours = problem.LongestHours - hour,
                ReadyByHour = problem.ReadyByHour - hour,
            };
            if (PlanSearch.Run(later).Best is not null)
            {
                return [new(ReliefKind.StartLater, hour)];
            }
        }

        return [];
    }
}
