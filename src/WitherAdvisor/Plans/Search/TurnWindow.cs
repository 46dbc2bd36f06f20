using WitherAdvisor.Sites;

namespace WitherAdvisor.Plans.Search;

/// <summary>When hands may turn.</summary>
internal static class TurnWindow
{
    /// <summary>
    /// Turns are placed to hold six tenths of the tolerated spread: no bed is as even as the model's, and it comes to the turns of
    /// common practice, about every two hours on rain-wet leaf and nearer to every hour in a dry windy spell.
    /// </summary>
    private const double AimedShare = 0.6;

    /// <summary>The spread, wet basis, at which a turn is due.</summary>
    public static double DueSpreadWetBasis(WitherStyle style) => AimedShare * style.ToleratedSpreadWetBasis;

    /// <summary>The last hour for a turn: none in cooling, none while leaf waits, none in the last hours before rolling.</summary>
    public static double LastHour(WitherStyle style, double readyHour, double heatOffHour, double stopHour) =>
        Math.Min(Math.Min(heatOffHour, readyHour), stopHour - style.TurnFreeLastHours);

    /// <summary>Turns where the layers part by a spread (wet basis), as the site's hands can do them.</summary>
    public static TurnRule.WhenUneven WhenUneven(PlanProblem problem, double spreadWetBasis, double lastHour) => new(
        spreadWetBasis, FirstHour(problem), lastHour, problem.Style.LeastHoursBetweenTurns, MostTurns(problem));

    /// <summary>Turns that are left of the most that the site does.</summary>
    public static int MostTurns(PlanProblem problem) => Math.Max(problem.Style.MostTurns - problem.Start.TurnedHours.Count, 0);

    public static double FirstHour(PlanProblem problem) =>
        Math.Max(problem.Start.LastTurnHour + problem.Style.LeastHoursBetweenTurns, problem.Start.Hour);
}
