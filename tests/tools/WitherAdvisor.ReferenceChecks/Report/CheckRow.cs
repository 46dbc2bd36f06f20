using WitherAdvisor.ReferenceChecks.Cases;

namespace WitherAdvisor.ReferenceChecks.Report;

/// <summary>Ours beside theirs.</summary>
/// <param name="Check">What is compared, with its unit in the name.</param>
/// <param name="Where">For which inputs.</param>
/// <param name="Source">Whose value theirs is.</param>
/// <param name="Ours">What this project gets.</param>
/// <param name="Theirs">What they get.</param>
/// <param name="Tolerance">How near ours must come.</param>
public sealed record CheckRow(string Check, string Where, string Source, double Ours, double Theirs, Tolerance Tolerance)
{
    /// <summary>Theirs as printed in its file; null for a value worked out now.</summary>
    public string? Printed { get; init; }

    public double Difference => Ours - Theirs;

    public bool Passes => double.IsFinite(Ours) && double.IsFinite(Theirs) && Tolerance.Allows(Ours, Theirs);

    /// <summary>How much of the tolerance is used: over 1 is outside it. Of a bound, how far ours lies beyond it.</summary>
    public double Used => Tolerance.Kind switch
    {
        ToleranceKind.AtMost => Difference,
        ToleranceKind.AtLeast => -Difference,
        _ => Math.Abs(Difference) / Math.Max(Tolerance.InUnit(Theirs), double.Epsilon),
    };
}
