namespace WitherAdvisor.Plans;

/// <summary>The stages of a wither, in order; a plan may lack the first or the last.</summary>
public enum StageKind
{
    /// <summary>Water on the leaf is driven off.</summary>
    SurfaceDrying,

    /// <summary>Water in the leaf is driven off.</summary>
    Main,

    /// <summary>Ambient air, no heat, before rolling.</summary>
    Cooling,

    /// <summary>Ready leaf waits on slow ambient air until it may or shall be rolled.</summary>
    Holding,

    /// <summary>Ambient air, no heat and no turn, until the last leaf is on: it comes before all others.</summary>
    Loading,
}
