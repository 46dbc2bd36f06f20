namespace WitherAdvisor.Plans.Writing;

/// <summary>What could make a plan possible, or a better one.</summary>
public enum ReliefKind
{
    /// <summary>Amount: kg/m².</summary>
    SpreadThinner,

    /// <summary>Amount: kg/m².</summary>
    SpreadThicker,

    /// <summary>Amount: hours later.</summary>
    StartLater,

    /// <summary>Amount: hours later.</summary>
    RollLater,

    /// <summary>Amount: hours earlier.</summary>
    StartEarlier,

    /// <summary>Amount: share of full flow.</summary>
    SlowerFan,

    /// <summary>No amount: read dry and wet bulb at the loft and send them.</summary>
    ReadAmbientAir,
}
