namespace WitherAdvisor.Recalibration.Report;

/// <summary>A coefficient before and after.</summary>
/// <param name="Name">Name of its property.</param>
/// <param name="Symbol">As in the formulas.</param>
/// <param name="Unit">"1" for a fraction.</param>
/// <param name="Prior">Before any outcome.</param>
/// <param name="Before">In the current set.</param>
/// <param name="After">In the proposed set.</param>
/// <param name="Low90">The true value lies above this with a chance of 95 in 100.</param>
/// <param name="High90">And below this.</param>
/// <param name="VarianceRemoved">Share of the prior variance that the outcomes removed, 0 to 1.</param>
/// <param name="Identifiability">Whether that is enough to tell it.</param>
public sealed record CoefficientLearning(
    string Name,
    string Symbol,
    string Unit,
    double Prior,
    double Before,
    double After,
    double Low90,
    double High90,
    double VarianceRemoved,
    Identifiability Identifiability);
