using WitherAdvisor.Coefficients;
using WitherAdvisor.Leaf;
using WitherAdvisor.Readings;
using WitherAdvisor.Sites;

namespace WitherAdvisor.Advice;

/// <summary>Everything an advice is made of. The same request always gives the same answer.</summary>
/// <param name="Site">Where.</param>
/// <param name="Trough">On what.</param>
/// <param name="Batch">Which leaf.</param>
/// <param name="Readings">Weather up to loading, in any order, gaps allowed; 7 days or more wanted, 60 better.</param>
/// <param name="RainTotals">Rain stated by hand for stretches without readings.</param>
/// <param name="Forecast">Weather from loading on, in any order; may be empty. What it holds of the hours before counts where nothing was read.</param>
/// <param name="Coefficients">The set to use.</param>
public sealed record AdviceRequest(
    Site Site,
    Trough Trough,
    Batch Batch,
    IReadOnlyList<WeatherReading> Readings,
    IReadOnlyList<RainTotal> RainTotals,
    IReadOnlyList<WeatherReading> Forecast,
    WitherCoefficients Coefficients);
