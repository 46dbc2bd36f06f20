namespace WitherAdvisor.Recalibration.Report;

/// <summary>What the hold-out says of a proposal.</summary>
public enum VerdictKind
{
    /// <summary>Nearer to the ready times it had not seen than the current set.</summary>
    BetterThanCurrent,

    /// <summary>Not nearer.</summary>
    NotBetter,

    /// <summary>Too few to hold any out.</summary>
    TooFewOutcomes,
}
