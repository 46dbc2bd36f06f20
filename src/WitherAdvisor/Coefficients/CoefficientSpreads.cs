namespace WitherAdvisor.Coefficients;

/// <summary>
/// How far the true coefficients of one loft and its leaf may lie from those of a set: standard deviations, of the logarithm
/// unless said. Those of the defaults are from memory; a set learned from outcomes knows better.
/// </summary>
public sealed record CoefficientSpreads
{
    /// <summary>Of g_0 in advice by the defaults: a loft without outcomes knows no more of its own (from memory).</summary>
    public const double CuticularConductanceUntaught = 0.40;

    /// <summary>Of g_0; it stands for the leaf area too, which works with it.</summary>
    public double CuticularConductance { get; init; } = 0.15;

    /// <summary>Of g_b.</summary>
    public double BoundaryLayerConductance { get; init; } = 0.15;

    /// <summary>Of S_c.</summary>
    public double SurfaceCapacity { get; init; } = 0.30;

    /// <summary>Of r, and of the canopy's store with it.</summary>
    public double SurfaceRetention { get; init; } = 0.30;

    /// <summary>Of the moisture that a drought leaves, wet basis (not of a logarithm).</summary>
    public double DroughtMoistureWetBasis { get; init; } = 0.01;

    /// <summary>Of the moisture gained from drought to no stress, wet basis (not of a logarithm).</summary>
    public double DroughtToWetMoistureGain { get; init; } = 0.01;

    /// <summary>Of β (not of a logarithm).</summary>
    public double TurnBlend { get; init; } = 0.15;

    /// <summary>Of the airflow that a trough is said to have.</summary>
    public double Airflow { get; init; } = 0.08;
}
