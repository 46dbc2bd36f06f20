namespace WitherAdvisor.ReferenceChecks.Cases;

/// <summary>How far from the reference a value may lie.</summary>
/// <param name="Kind">How it is measured.</param>
/// <param name="Amount">In the unit of the quantity, or as a share of it.</param>
/// <param name="Reason">Why so much and no more.</param>
public sealed record Tolerance(ToleranceKind Kind, double Amount, string Reason)
{
    public static Tolerance Of(string kind, double amount, string reason) => new(
        kind switch
        {
            "absolute" => ToleranceKind.Absolute,
            "relative" => ToleranceKind.Relative,
            "at_most" => ToleranceKind.AtMost,
            "at_least" => ToleranceKind.AtLeast,
            _ => throw new InvalidDataException($"unknown kind of tolerance {kind}"),
        },
        amount,
        reason);

    /// <summary>In the unit of the quantity.</summary>
    public double InUnit(double expected) => Kind == ToleranceKind.Relative ? Amount * Math.Abs(expected) : Amount;

    public bool Allows(double ours, double expected) => Kind switch
    {
        ToleranceKind.AtMost => ours <= expected + Amount,
        ToleranceKind.AtLeast => ours >= expected - Amount,
        _ => Math.Abs(ours - expected) <= InUnit(expected),
    };
}
