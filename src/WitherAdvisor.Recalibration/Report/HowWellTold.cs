namespace WitherAdvisor.Recalibration.Report;

/// <summary>Whether the outcomes could tell a coefficient.</summary>
public enum HowWellTold
{
    /// <summary>Under a quarter of what was open is settled: the value is still the prior's.</summary>
    NotTold,

    /// <summary>Between.</summary>
    Partly,

    /// <summary>At least three quarters of it.</summary>
    Told,
}
