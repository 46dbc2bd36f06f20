namespace WitherAdvisor.Plans.Writing;

/// <summary>What could make a plan possible, or a better one.</summary>
public enum ReliefKind
{
    /// <summary>Amount: kg/m².</summary>
    SpreadThinner,

    /// <summary>Amount: kg/m².</summary>
    SpreadThicker,

    /// <summary>Amount: hours later.</summary>
    RollLater,

    /// <summary>Amount: hours earlier.</summary>
    StartEarlier,

    /// <summary>Amount: kW that would be enough.</summary>
    MoreHeat,

    /// <summary>Amount: hours from loading to which the leaf is to be kept out of the sun and the intake shaded.</summary>
    Shade,

    /// <summary>Amount: hours later. Given no more: leaf on a trough whose air stands grows warm. Kept advice may hold it.</summary>
    StartLater,

    /// <summary>Amount: share of full flow. Given no more: the plan slows the fan itself. Kept advice may hold it.</summary>
    SlowerFan,

    /// <summary>No amount: read dry and wet bulb at the loft and send them.</summary>
    ReadAmbientAir,
}
