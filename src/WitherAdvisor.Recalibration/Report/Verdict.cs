namespace WitherAdvisor.Recalibration.Report;

/// <summary>Whether the proposal is worth adopting.</summary>
/// <param name="Kind">What the hold-out says.</param>
/// <param name="ErrorReduction">Share of the current set's mean error of ready time that is gone; below 0 where it grew. Null where it could not be told.</param>
/// <param name="FewestOutcomes">Outcomes that a fit needs, where there were fewer; else null.</param>
public sealed record Verdict(VerdictKind Kind, double? ErrorReduction, int? FewestOutcomes = null)
{
    /// <summary>By the outcomes that were held out.</summary>
    internal static Verdict Of(int used, int fewest, HoldOut? holdOut)
    {
        if (used < fewest)
        {
            return new(VerdictKind.TooFewOutcomes, null, fewest);
        }

        // All four are told, so all four have to be known.
        if (holdOut is not
            {
                Proposed.MeanAbsoluteHours: { } proposed,
                Current.MeanAbsoluteHours: { } current,
                ProposedSiteAlone.MeanAbsoluteHours: not null,
                Averages.MeanAbsoluteHours: not null,
            })
        {
            return new(VerdictKind.TooFewOutcomes, null);
        }

        return new(proposed < current ? VerdictKind.BetterThanCurrent : VerdictKind.NotBetter, 1 - proposed / current);
    }
}
