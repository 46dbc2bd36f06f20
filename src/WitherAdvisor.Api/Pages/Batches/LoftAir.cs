using WitherAdvisor.Weather;

namespace WitherAdvisor.Api.Pages.Batches;

/// <summary>Air and rain as a person read them at the loft.</summary>
/// <param name="Reading">At loading; null where nobody read anything.</param>
/// <param name="RainTotals">Stretches that do not overlap, newest first.</param>
public sealed record LoftAir(WeatherReading? Reading, IReadOnlyList<RainTotal> RainTotals);
