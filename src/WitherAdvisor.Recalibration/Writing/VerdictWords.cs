using WitherAdvisor.Recalibration.Report;

namespace WitherAdvisor.Recalibration.Writing;

/// <summary>The verdict on a proposal, in numbers and words.</summary>
internal static class VerdictWords
{
    public static Verdict Of(int used, int fewest, HoldOut? holdOut)
    {
        if (used < fewest)
        {
            return new(
                VerdictKind.TooFewOutcomes,
                $"{used} of at least {fewest} outcomes: too few to tell a loft from one odd night. The proposal is what was believed before any outcome.", null);
        }

        if (holdOut is not { Proposed.MeanAbsoluteHours: { } proposed, ProposedSiteAlone.MeanAbsoluteHours: { } alone, Current.MeanAbsoluteHours: { } current, Averages.MeanAbsoluteHours: { } averages })
        {
            return new(
                VerdictKind.TooFewOutcomes,
                $"{used} outcomes are too few to hold any out: whether the proposal is better than the current set is not known.", null);
        }

        bool better = proposed < current;
        double reduction = 1 - proposed / current;
        return new(
            better ? VerdictKind.BetterThanCurrent : VerdictKind.NotBetter,
            $"{(better ? "Better than the current set" : "Not better than the current set")} on {holdOut.Proposed.ReadyTimes} outcomes it had not seen: the ready time is off by {proposed:0.00} h on average, against {current:0.00} h by the current set and {averages:0.00} h by a table of averages; by the site's set for all leaf {alone:0.00} h.",
            reduction);
    }
}
