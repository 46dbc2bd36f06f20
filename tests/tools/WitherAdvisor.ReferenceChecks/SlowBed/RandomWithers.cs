using WitherAdvisor.Air;
using WitherAdvisor.Coefficients;
using WitherAdvisor.Leaf;

namespace WitherAdvisor.ReferenceChecks.SlowBed;

/// <summary>Withers drawn over all that a loft may have, the coefficients over their whole stated ranges.</summary>
public static class RandomWithers
{
    public const int Seed = 20_261_125;

    private static readonly double[] Turns = [1, 2, 3, 4, 6, double.PositiveInfinity];

    public static IReadOnlyList<BedWither> Draw(int count)
    {
        var random = new Random(Seed);
        return [.. Enumerable.Range(0, count).Select(_ => One(random))];
    }

    private static BedWither One(Random random)
    {
        double pressurePa = StandardAtmosphere.PressurePa(Between(random, 0, 2_500));
        AirState ambient = AirState.FromRelativeHumidity(Between(random, 8, 32), Between(random, 0.3, 0.98), pressurePa);
        double plenumC = Math.Max(Math.Min(ambient.DryBulbC + Between(random, 0, 12), 35), ambient.DryBulbC);
        double moisture = Between(random, 0.72, 0.83);
        double surface = random.Next(3) == 0 ? 0 : Between(random, 0, 0.3);
        var leaf = new LeafState(moisture, surface);
        return new(
            pressurePa, plenumC, ambient.HumidityRatio, Between(random, 0.1, 0.4),
            leaf.DryMatterKg(Between(random, 10, 35)), leaf, Between(random, 0.55, 0.68), Turns[random.Next(Turns.Length)],
            Drawn(random));
    }

    private static WitherCoefficients Drawn(Random random) => CoefficientCatalogue.All.Aggregate(
        new WitherCoefficients(), (set, coefficient) => coefficient.With(set, Between(random, coefficient.Low, coefficient.High)));

    private static double Between(Random random, double low, double high) => low + (high - low) * random.NextDouble();
}
