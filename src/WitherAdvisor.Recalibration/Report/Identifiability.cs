namespace WitherAdvisor.Recalibration.Report;

/// <summary>Whether the outcomes could identify a coefficient.</summary>
public enum Identifiability
{
    /// <summary>Under a quarter of what was open is settled: the value is still the prior's.</summary>
    NotIdentified,

    /// <summary>Between.</summary>
    Partly,

    /// <summary>At least three quarters of it.</summary>
    Identified,
}
