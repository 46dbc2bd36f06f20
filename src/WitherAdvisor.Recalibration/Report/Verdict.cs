namespace WitherAdvisor.Recalibration.Report;

/// <summary>Whether the proposal is worth adopting.</summary>
/// <param name="Kind">What the hold-out says.</param>
/// <param name="Text">A sentence for people.</param>
/// <param name="ErrorReduction">Share of the current set's mean error of ready time that is gone; below 0 where it grew. Null where it could not be told.</param>
public sealed record Verdict(VerdictKind Kind, string Text, double? ErrorReduction);
