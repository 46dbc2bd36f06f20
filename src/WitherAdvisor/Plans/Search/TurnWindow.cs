using WitherAdvisor.Sites;

namespace WitherAdvisor.Plans.Search;

/// <summary>When hands may turn.</summary>
internal static class TurnWindow
{
    /// <summary>The last hour for a turn: none in cooling, none while leaf waits, none in the last hours before rolling.</summary>
    public static double LastHour(WitherStyle style, double readyHour, double heatOffHour, double stopHour) =>
        Math.Min(Math.Min(heatOffHour, readyHour), stopHour - style.TurnFreeLastHours);

    /// <summary>Turns that are left of the most that the site does.</summary>
    public static int MostTurns(PlanProblem problem) => Math.Max(problem.Style.MostTurns - problem.Start.TurnedHours.Count, 0);

    public static double FirstHour(PlanProblem problem) =>
        Math.Max(problem.TurnsFromHour + problem.Style.LeastHoursBetweenTurns, problem.Start.Hour);
}
