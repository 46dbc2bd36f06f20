using WitherAdvisor.Coefficients;

namespace WitherAdvisor.Documentation;

/// <summary>A number of the model that is not learned: a constant, a threshold, a limit.</summary>
/// <param name="Code">snake_case name.</param>
/// <param name="Topic">What part of the model it belongs to.</param>
/// <param name="Value">As the model uses it.</param>
/// <param name="Unit">"1" for a fraction, <see cref="MoisturePoints"/> for a difference of moistures, "" for a bare number.</param>
/// <param name="Status">How well it is founded.</param>
/// <param name="Source">Where it is from.</param>
public sealed record ModelConstant(
    string Code, ModelTopic Topic, double Value, string Unit, CoefficientStatus Status, string Source)
{
    /// <summary>A difference of moistures, as a fraction: shown in percentage points.</summary>
    public const string MoisturePoints = "points";
}
