namespace WitherAdvisor.Recalibration.Report;

/// <summary>Whether leaf, loft or measuring change with time: trend of what the proposed set leaves over.</summary>
/// <param name="PerYear">Change of predicted over actual ready time in a year, as a logarithm.</param>
/// <param name="Low90">Lower end of its 90 % interval.</param>
/// <param name="High90">Upper end.</param>
/// <param name="Months">Stretches of thirty days that had outcomes.</param>
public sealed record Drift(double PerYear, double Low90, double High90, int Months)
{
    /// <summary>Whether it is more than chance may bring.</summary>
    public bool IsSignificant => Low90 > 0 || High90 < 0;
}
