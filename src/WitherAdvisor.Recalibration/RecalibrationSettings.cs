using WitherAdvisor.Coefficients;

namespace WitherAdvisor.Recalibration;

/// <summary>How a recalibration is done.</summary>
public sealed record RecalibrationSettings
{
    /// <summary>
    /// What was believed before any outcome, with its spreads. Never a set that was learned from the same outcomes: they
    /// would count twice.
    /// </summary>
    public WitherCoefficients Prior { get; init; } = new();

    /// <summary>Name of the proposed set.</summary>
    public string ProposedName { get; init; } = "proposed";

    public MeasurementErrors Errors { get; init; } = new();

    public GroupSpreads Groups { get; init; } = new();

    /// <summary>Outcomes under which the priors stay: one odd night must not pass for a loft.</summary>
    public int FewestOutcomes { get; init; } = 4;

    /// <summary>Share of outcomes that are gross errors, before they are looked at (from memory: paper logs).</summary>
    public double GrossErrorShare { get; init; } = 0.05;

    /// <summary>How many times as far off a gross error is.</summary>
    public double GrossErrorFactor { get; init; } = 8;

    /// <summary>Observations that the stated errors are worth against what residuals say of them: few outcomes can't shrink them.</summary>
    public double StatedErrorsWeigh { get; init; } = 30;

    /// <summary>Share of the outcomes, the latest, that are held out.</summary>
    public double HoldOutShare { get; init; } = 0.25;

    public int MostIterations { get; init; } = 40;

    /// <summary>Threads; what comes out does not depend on it.</summary>
    public int Workers { get; init; } = Environment.ProcessorCount;
}
