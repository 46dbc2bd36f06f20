using WitherAdvisor.Loft.Kept.Batches;
using WitherAdvisor.Outcomes;

namespace WitherAdvisor.Loft.Recalibrating.Observing;

/// <summary>When the leaf of a wither was turned, hours from loading.</summary>
public static class ObservedTurns
{
    /// <summary>Where neither log nor advice tells (common practice, no published source).</summary>
    private const double UsualEveryHours = 2;

    /// <summary>As written down; a number of turns without hours is spread evenly; else as advised, else as is usual.</summary>
    public static IReadOnlyList<double> Of(WitherOutcome outcome, AdviceFigures? advice, double hours)
    {
        if (outcome.TurnedAtHours.Count > 0)
        {
            return outcome.TurnedAtHours;
        }

        return outcome.Turns is { } turns
            ? [.. Enumerable.Range(1, turns).Select(turn => hours * turn / (turns + 1))]
            : Every(advice?.AdvisedTurnEveryHours is > 0 and { } advised ? advised : UsualEveryHours, hours);
    }

    private static IReadOnlyList<double> Every(double interval, double hours) =>
        [.. Enumerable.Range(1, Math.Max((int)Math.Ceiling(hours / interval) - 1, 0)).Select(turn => turn * interval)];
}
