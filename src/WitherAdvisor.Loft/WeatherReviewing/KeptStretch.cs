using WitherAdvisor.Readings;
using WitherAdvisor.Readings.Sources;
using WitherAdvisor.Review;

namespace WitherAdvisor.Loft.WeatherReviewing;

/// <summary>What is kept of the weather of a stretch.</summary>
/// <param name="Readings">Of every source, each at its time.</param>
/// <param name="RainTotals">Those that touch it.</param>
/// <param name="Best">The best of each instant from all sources.</param>
/// <param name="Holes">Stretches of it of which nothing is known.</param>
/// <param name="Age">How old it is.</param>
public sealed record KeptStretch(
    IReadOnlyList<SourcedReading> Readings, IReadOnlyList<RainTotal> RainTotals, IReadOnlyList<ComposedReading> Best,
    IReadOnlyList<WeatherHole> Holes, WeatherAge Age);
