using WitherAdvisor.Coefficients;
using WitherAdvisor.Recalibration.Report;

namespace WitherAdvisor.Recalibration.Learning;

/// <summary>A proposal and the report on it. Nothing is adopted by it.</summary>
/// <param name="Proposed">For leaf of which nobody says more: the site's mix.</param>
/// <param name="Report">What to judge it by.</param>
public sealed record RecalibrationResult(WitherCoefficients Proposed, RecalibrationReport Report);
