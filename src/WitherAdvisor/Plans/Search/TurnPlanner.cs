namespace WitherAdvisor.Plans.Search;

/// <summary>
/// Chooses when the leaf is turned: the fewest turns that hold the spread between layers, placed where they hold it lowest.
/// Turning each time the layers have parted by the same amount does that, so the amount is what is searched for.
/// </summary>
/// <param name="Hours">When to turn, hours from loading.</param>
/// <param name="LargestSpreadWetBasis">Largest spread of tissue moisture between layers.</param>
/// <param name="WithOneMoreWetBasis">The same with one turn more; null where no more fit in.</param>
internal sealed record TurnPlan(IReadOnlyList<double> Hours, double LargestSpreadWetBasis, double? WithOneMoreWetBasis);

internal sealed class TurnPlanner(CandidateTrial trial, Candidate chosen)
{
    private const int Halvings = 10;
    private const double WidestSpreadWetBasis = 0.4;
    private static readonly int[] WholeHours = [6, 4, 3, 2, 1];

    private readonly PlanProblem problem = trial.Problem;
    private readonly double lastHour = TurnWindow.LastHour(trial.Problem.Style, chosen.ReadyHour, chosen.HeatOffHour, chosen.StopHour);
    private readonly double dryTo = Math.Max(chosen.ReadyHour - chosen.CoolingDelayHours, trial.Problem.Start.Hour);

    public TurnPlan Plan()
    {
        DryingTrace asNeeded = TurnedAt(TurnWindow.DueSpreadWetBasis(problem.Style), int.MaxValue);
        int turns = Math.Min(asNeeded.TurnHours.Count, TurnWindow.MostTurns(problem));
        DryingTrace best = Lowest(turns);
        DryingTrace chosenTimes = OnWholeHours(turns, best) ?? best;
        DryingTrace more = Lowest(turns + 1);
        return new(
            chosenTimes.TurnHours, chosenTimes.LargestSpreadWetBasis,
            more.TurnHours.Count > turns ? Math.Min(more.LargestSpreadWetBasis, chosenTimes.LargestSpreadWetBasis) : null);
    }

    /// <summary>The times for so many turns that hold the spread lowest.</summary>
    private DryingTrace Lowest(int turns)
    {
        double low = 0;
        double high = WidestSpreadWetBasis;
        DryingTrace best = TurnedAt(high, turns);
        for (int i = 0; i < Halvings && turns > 0; i++)
        {
            double middle = (low + high) / 2;
            DryingTrace tried = TurnedAt(middle, int.MaxValue);
            if (tried.TurnHours.Count > turns)
            {
                low = middle;
            }
            else
            {
                high = middle;
                best = tried.LargestSpreadWetBasis <= best.LargestSpreadWetBasis ? tried : best;
            }
        }

        return best;
    }

    /// <summary>So many turns every so many whole hours, where they hold the spread as well: people keep whole hours. Null where they do not.</summary>
    private DryingTrace? OnWholeHours(int turns, DryingTrace best)
    {
        const double AsWellWetBasis = 0.002;
        double holds = Math.Max(TurnWindow.DueSpreadWetBasis(problem.Style), best.LargestSpreadWetBasis + AsWellWetBasis);
        foreach (int interval in WholeHours.Where(hours => hours >= problem.Style.LeastHoursBetweenTurns))
        {
            double first = Math.Max(problem.Start.LastTurnHour + interval, problem.Start.Hour);
            int fits = lastHour >= first ? (int)((lastHour - first) / interval) + 1 : 0;
            if (fits == turns && turns > 0)
            {
                DryingTrace tried = Run(new TurnRule.AtHours([.. Enumerable.Range(0, turns).Select(i => first + i * interval)]));
                if (tried.LargestSpreadWetBasis <= holds)
                {
                    return tried;
                }
            }
        }

        return null;
    }

    private DryingTrace TurnedAt(double spreadWetBasis, int most) =>
        Run(TurnWindow.WhenUneven(problem, spreadWetBasis, lastHour) with { Most = most });

    private DryingTrace Run(TurnRule turns) => trial.Run(chosen.Air, turns, dryTo, dryTo, chosen.SurfaceEndHour);
}
