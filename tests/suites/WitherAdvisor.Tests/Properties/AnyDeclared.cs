using FsCheck.Fluent;
using FsCheck;
using WitherAdvisor.Advice;
using WitherAdvisor.Coefficients;
using WitherAdvisor.Leaf;
using WitherAdvisor.Readings;
using WitherAdvisor.Sites;

namespace WitherAdvisor.Tests.Properties;

/// <summary>
/// A batch of anything at all within the ranges that the service declares for its input, their ends more often than
/// not: a desert at −40 °C on a trough of half a square metre is a request like any other.
/// </summary>
public sealed class AnyDeclared
{
    private const int Hours = 36;

    private readonly Random random;

    private AnyDeclared(int seed) => random = new(seed);

    public static Arbitrary<AdviceRequest> Batches() =>
        Gen.Choose(0, int.MaxValue).Select(Of).ToArbitrary();

    public static AdviceRequest Of(int seed) => new AnyDeclared(seed).Request();

    private AdviceRequest Request()
    {
        var loaded = new DateTimeOffset(2026, random.Next(1, 13), 3, random.Next(24), 0, 0, TimeSpan.Zero);
        var trough = new Trough(In(0.5, 500), In(0.02, 0.6), In(0.1, 1), In(5, 60));
        return new(
            new Site(In(-430, 5_000), In(-66, 66), In(-180, 180), In(40, 120), Style(), Maybe(50_000, 110_000)),
            trough,
            new Batch(
                new LeafLabel("Invented", "Field", null, null, LeafStandard.Fine), loaded.AddHours(-In(2, 30)), loaded.AddHours(-In(0, 2)),
                loaded, In(1, Math.Min(30_000, trough.AreaM2 * trough.MostLoadKgPerM2)), Maybe(0, 0.6), null, Maybe(0.60, 0.90), random.Next(2) == 0 ? loaded.AddHours(In(0, 30)) : null),
            Air(loaded, -random.Next(0, 72), 0), Totals(loaded), Air(loaded, 1, random.Next(1, Hours)), Coefficients());
    }

    private WitherStyle Style()
    {
        double ceilingK = In(1, 15);
        double longest = In(6, 30);
        return new()
        {
            WantedHygrometricDifferenceK = In(0.5, Math.Min(12, ceilingK)),
            TargetMoistureWetBasis = In(0.45, 0.75),
            PlenumCeilingC = In(20, WitherStyle.HighestPlenumC),
            HygrometricDifferenceCeilingK = ceilingK,
            WetLeafHygrometricDifferenceCeilingK = In(1, 15),
            ShortestHoursSincePlucking = In(0, Math.Min(20, longest)),
            ShortestHoursSincePluckingInDryWindySpell = In(0, Math.Min(20, longest)),
            LongestHoursSincePlucking = longest,
            ToleratedSpreadWetBasis = In(0.005, 0.15),
            CoolingHours = In(0, 3),
        };
    }

    private WitherCoefficients Coefficients() => CoefficientCatalogue.All.Aggregate(
        new WitherCoefficients(), (set, coefficient) => coefficient.With(set, In(coefficient.Low, coefficient.High)));

    /// <summary>A night about one temperature, or of numbers that have nothing to do with one another.</summary>
    private WeatherReading[] Air(DateTimeOffset loaded, int from, int to)
    {
        bool wild = random.Next(3) == 0;
        double dryBulbC = In(-40, 60);
        return [.. Enumerable.Range(from, Math.Max(to - from + 1, 0)).Select(hour => new WeatherReading(
            loaded.AddHours(hour),
            DryBulbC: wild ? Maybe(-40, 60) : Math.Clamp(dryBulbC + In(-2, 2), -40, 60),
            DewPointC: wild ? Maybe(-60, 50) : null,
            WetBulbC: wild ? Maybe(-40, 50) : null,
            RelativeHumidity: wild ? Maybe(0.01, 1) : In(0.01, 1),
            RainMm: Maybe(0, 300),
            WindMPerS: Maybe(0, 75),
            StationPressurePa: Maybe(50_000, 110_000),
            ShortwaveWPerM2: Maybe(0, 1_500)))];
    }

    private RainTotal[] Totals(DateTimeOffset loaded) => random.Next(3) > 0
        ? []
        : [new(loaded.AddHours(-In(30, 200)), loaded.AddHours(-In(0, 30)), In(0, 3_000))];

    private double? Maybe(double low, double high) => random.Next(3) == 0 ? null : In(low, high);

    private double In(double low, double high) => random.Next(8) switch
    {
        0 => low,
        1 => high,
        _ => low + (high - low) * random.NextDouble(),
    };
}
