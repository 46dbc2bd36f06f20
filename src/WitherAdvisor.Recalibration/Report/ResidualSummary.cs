namespace WitherAdvisor.Recalibration.Report;

/// <summary>Predicted less actual ready time of outcomes that belong together, by the proposed set, h.</summary>
/// <param name="By">"spell", "loading_hour" or "cultivar".</param>
/// <param name="Key">Which.</param>
/// <param name="Outcomes">How many.</param>
/// <param name="LowerQuartileHours">A quarter lies below.</param>
/// <param name="MedianHours">Half lies below.</param>
/// <param name="UpperQuartileHours">Three quarters lie below.</param>
/// <param name="CurrentMedianHours">The median by the current set.</param>
public sealed record ResidualSummary(
    string By, string Key, int Outcomes, double LowerQuartileHours, double MedianHours, double UpperQuartileHours, double CurrentMedianHours);
