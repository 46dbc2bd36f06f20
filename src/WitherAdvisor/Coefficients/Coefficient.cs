namespace WitherAdvisor.Coefficients;

/// <summary>One number of <see cref="WitherCoefficients"/>: what it is, where it may lie, how well it is founded.</summary>
/// <param name="Name">Name of its property.</param>
/// <param name="Symbol">As in the formulas.</param>
/// <param name="Unit">"1" for a fraction.</param>
/// <param name="Low">Lowest sensible value.</param>
/// <param name="High">Highest sensible value.</param>
/// <param name="Status">How well it is founded.</param>
/// <param name="Source">Where the default is from.</param>
/// <param name="Of">Its value in a set.</param>
/// <param name="With">A set with another value of it.</param>
public sealed record Coefficient(
    string Name,
    string Symbol,
    string Unit,
    double Low,
    double High,
    CoefficientStatus Status,
    string Source,
    Func<WitherCoefficients, double> Of,
    Func<WitherCoefficients, double, WitherCoefficients> With)
{
    /// <summary>Its value in the default set.</summary>
    public double Default { get; } = Of(new WitherCoefficients());
}
