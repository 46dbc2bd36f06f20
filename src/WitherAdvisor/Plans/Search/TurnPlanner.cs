namespace WitherAdvisor.Plans.Search;

/// <summary>
/// Chooses how often the leaf is turned and when. How often: by how far the layers would part if nobody turned, so that a
/// little more leaf is never more than a turn more. When: each time they have parted by the same amount, which holds the
/// largest spread lowest; that amount is what is searched for.
/// </summary>
internal sealed class TurnPlanner(CandidateTrial trial, Candidate chosen)
{
    /// <summary>
    /// A turn for each so many times the tolerated spread that the layers would part by if nobody turned: it comes to the
    /// turns of common practice, about every two hours on rain-wet leaf and near to every hour in a dry windy spell.
    /// </summary>
    public const double ToleratedSpreadsPerTurn = 1.4;

    private const int Halvings = 10;
    // Less than a moisture meter tells.
    private const double AsWellWetBasis = 0.005;
    private const double WidestSpreadWetBasis = 0.4;
    private static readonly int[] WholeHours = [6, 4, 3, 2, 1];

    private readonly PlanProblem problem = trial.Problem;
    /// <summary>A quarter hour is left for a stop that is written a little earlier than it was found.</summary>
    private readonly double lastHour = TurnWindow.LastHour(trial.Problem.Style, chosen.ReadyHour, chosen.HeatOffHour, chosen.StopHour) - 0.25;

    private readonly double dryTo = Math.Max(chosen.ReadyHour - chosen.CoolingDelayHours, trial.Problem.Start.Hour);

    /// <summary>Turns that the leaf wants, as far as hands can do them.</summary>
    public int Wanted()
    {
        double unturned = Run(TurnRule.None).LargestSpreadWetBasis;
        double tolerated = problem.Style.ToleratedSpreadWetBasis;
        int wanted = unturned <= tolerated ? 0 : (int)Math.Ceiling(unturned / (ToleratedSpreadsPerTurn * tolerated));
        return Math.Min(wanted, TurnWindow.MostTurns(problem));
    }

    public TurnPlan Plan()
    {
        int turns = Wanted();
        DryingTrace best = Lowest(turns);
        DryingTrace planned = OnWholeHours(best) ?? best;
        DryingTrace more = Lowest(turns + 1);
        return new(
            planned.TurnHours, planned.LargestSpreadWetBasis,
            more.TurnHours.Count > planned.TurnHours.Count ? Math.Min(more.LargestSpreadWetBasis, planned.LargestSpreadWetBasis) : null);
    }

    /// <summary>The times for so many turns that hold the spread lowest; fewer only where no more fit in.</summary>
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

        // Where a hair less of spread calls for two turns more, the second of them is left out.
        return best.TurnHours.Count < turns ? TurnedAt(low, turns) : best;
    }

    /// <summary>As many turns every so many whole hours, where they hold the spread as well: people keep whole hours. Null where they do not.</summary>
    private DryingTrace? OnWholeHours(DryingTrace best)
    {
        int turns = best.TurnHours.Count;
        foreach (int interval in WholeHours.Where(hours => turns > 0 && hours >= problem.Style.LeastHoursBetweenTurns))
        {
            double first = Math.Max(problem.TurnsFromHour + interval, problem.Start.Hour);
            if (lastHour >= first && (int)((lastHour - first) / interval) + 1 == turns)
            {
                DryingTrace tried = Run(new TurnRule.AtHours([.. Enumerable.Range(0, turns).Select(i => first + i * interval)]));
                if (tried.LargestSpreadWetBasis <= best.LargestSpreadWetBasis + AsWellWetBasis)
                {
                    return tried;
                }
            }
        }

        return null;
    }

    private DryingTrace TurnedAt(double spreadWetBasis, int most) => Run(new TurnRule.WhenUneven(
        spreadWetBasis, TurnWindow.FirstHour(problem), lastHour, problem.Style.LeastHoursBetweenTurns, most));

    private DryingTrace Run(TurnRule turns) => trial.Run(chosen.Air, turns, dryTo, dryTo, chosen.SurfaceEndHour);
}
