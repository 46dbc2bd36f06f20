using WitherAdvisor.Recalibration.Report;

namespace WitherAdvisor.Words.Learning;

/// <summary>What a recalibration did and found, in a sentence each.</summary>
public static class RecalibrationWording
{
    public static string LeftOut(Wordbook words, LeftOutReason reason) => words.Name(reason);

    /// <summary>Whether the proposal is worth adopting.</summary>
    /// <param name="verdict">On it.</param>
    /// <param name="used">Outcomes fitted.</param>
    /// <param name="holdOut">What the verdict is from; null where there were too few to hold any out.</param>
    public static string Verdict(Wordbook words, Verdict verdict, int used, HoldOut? holdOut) => verdict switch
    {
        { FewestOutcomes: int fewest } => words.Say("learning.verdict.below_fewest", ("used", used), ("fewest", fewest)),
        { Kind: VerdictKind.TooFewOutcomes } => words.Say("learning.verdict.none_held_out", ("used", used)),
        { Kind: VerdictKind.BetterThanCurrent } => words.Say("learning.verdict.better", ("compared", Compared(words, holdOut!))),
        _ => words.Say("learning.verdict.not_better", ("compared", Compared(words, holdOut!))),
    };

    public static string Drift(Wordbook words, Drift drift) => drift switch
    {
        { IsSignificant: false } => words["learning.drift.none"],
        { PerYear: > 0 } => words.Say("learning.drift.sooner", ("share", $"{drift.PerYear:0.0%}")),
        _ => words.Say("learning.drift.later", ("share", $"{Math.Abs(drift.PerYear):0.0%}")),
    };

    /// <summary>A measurement that would teach, and how much.</summary>
    public static string Next(Wordbook words, NextMeasurement next) => words.Say(
        "learning.next",
        ("leaf", words.Name(next.Spell, "leaf")), ("measurement", words.OfCode("measurement", next.Code)),
        ("spread", $"{next.ReadySpreadBefore:0.0%}"), ("drop", $"{next.VarianceDrop:0.0%}"));

    /// <summary>Two coefficients that the outcomes cannot separate.</summary>
    public static string Alike(Wordbook words, CorrelationWarning pair) => words.Say(
        pair.Correlation < 0 ? "learning.alike.against" : "learning.alike.together",
        ("first", LearnedWording.Subject(words, pair.First)), ("second", LearnedWording.Subject(words, pair.Second)));

    private static string Compared(Wordbook words, HoldOut holdOut) => words.Say(
        "learning.compared",
        ("count", holdOut.Proposed.ReadyTimes),
        ("proposed", Hours(holdOut.Proposed)), ("current", Hours(holdOut.Current)), ("averages", Hours(holdOut.Averages)), ("site_alone", Hours(holdOut.ProposedSiteAlone)));

    private static string Hours(SetErrors errors) => $"{errors.MeanAbsoluteHours:0.00}";
}
