using WitherAdvisor.Readings;

namespace WitherAdvisor.Api.Pages.Batches;

/// <summary>Air and rain as a person read them at the loft.</summary>
/// <param name="Reading">At loading; null where nobody read anything.</param>
/// <param name="RainTotals">Shortest first; the longer ones hold the shorter.</param>
public sealed record LoftAir(WeatherReading? Reading, IReadOnlyList<RainTotal> RainTotals);
