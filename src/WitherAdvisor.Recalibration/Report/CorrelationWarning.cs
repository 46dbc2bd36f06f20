namespace WitherAdvisor.Recalibration.Report;

/// <summary>Two coefficients that the outcomes cannot separate.</summary>
/// <param name="First">Name of a coefficient.</param>
/// <param name="Second">Name of another.</param>
/// <param name="Correlation">−1 to 1: below 0 where more of one does the same as less of the other.</param>
public sealed record CorrelationWarning(string First, string Second, double Correlation);
