namespace WitherAdvisor.Recalibration;

/// <summary>How far leaf of one cultivar and standard may lie from the site's: standard deviations, from memory.</summary>
public sealed record GroupSpreads
{
    /// <summary>Of the logarithm of g_0.</summary>
    public double CuticularConductance { get; init; } = 0.10;

    /// <summary>Of the moisture at loading, wet basis.</summary>
    public double MoistureWetBasis { get; init; } = 0.005;
}
