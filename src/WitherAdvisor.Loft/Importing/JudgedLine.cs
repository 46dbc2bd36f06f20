using WitherAdvisor.Loft.Outcomes;

namespace WitherAdvisor.Loft.Importing;

/// <summary>A line of a log and what it comes to.</summary>
/// <param name="Faults">What of it does not fit what is kept.</param>
/// <param name="Oddities">What looks odd and is asked about.</param>
public sealed record JudgedLine<TLine>(TLine Line, RowState State, IReadOnlyList<LineFault> Faults, IReadOnlyList<OutcomeOddity> Oddities)
    where TLine : ILogLine;
