using FsCheck;
using FsCheck.Fluent;
using WitherAdvisor.Leaf;
using WitherAdvisor.LeafAtLoading;
using WitherAdvisor.Readings;

namespace WitherAdvisor.Tests.LeafAtLoading;

/// <summary>A history as it may come: days of hours off the hour, with values missing, rain in bursts, totals by hand.</summary>
/// <param name="Readings">One an instant.</param>
/// <param name="Totals">By hand.</param>
/// <param name="Leaf">Plucked on the last day.</param>
/// <param name="Seed">For what a property still has to draw.</param>
public sealed record History(
    IReadOnlyList<WeatherReading> Readings, IReadOnlyList<RainTotal> Totals, PluckedLeaf Leaf, int Seed)
{
    public LeafEstimate Estimate() => LeafFromWeather.Estimate(InventedDays.Site, Readings, Totals, Leaf, new());
}

public static class AnyHistory
{
    private static readonly double?[] WildValues =
        [null, 0, 1, -1, 0.5, 20, 1e9, -1e300, double.MaxValue, double.Epsilon, double.NaN, double.PositiveInfinity];

    public static Arbitrary<History> Histories() => Gen.Choose(0, int.MaxValue).Select(Of).ToArbitrary();

    /// <summary>Readings of any numbers whatever at any time whatever.</summary>
    public static History Wild(int seed)
    {
        var random = new Random(seed);
        WeatherReading[] readings = [.. Enumerable.Range(0, random.Next(60)).Select(_ => WildReading(random))];
        RainTotal[] totals =
            [.. Enumerable.Range(0, random.Next(5)).Select(_ => new RainTotal(AnyTime(random), AnyTime(random), AnyValue(random) ?? 3))];
        var leaf = new PluckedLeaf(
            AnyTime(random), AnyTime(random), AnyTime(random), null, random.Next(3) == 0 ? AnyValue(random) : null, null, AnyValue(random));
        return new(readings, totals, leaf, seed);
    }

    public static History Of(int seed)
    {
        var random = new Random(seed);
        int days = random.Next(1, 40);
        double known = random.NextDouble();
        double rainy = random.NextDouble() * 0.4;
        int minute = random.Next(0, 60);
        WeatherReading[] readings =
            [.. Enumerable.Range(-24 * days, 24 * days + 16).Select(hour => AnyReading(random, hour, minute, known, rainy))];
        RainTotal[] totals = [.. Enumerable.Range(0, random.Next(4)).Select(_ => AnyTotal(random, days))];
        double from = random.Next(4, 12);
        double to = from + random.Next(0, 6);
        return new(readings, totals, InventedDays.Plucked(from, to) with { LoadedAt = InventedDays.At(to + random.Next(0, 5)) }, seed);
    }

    private static WeatherReading AnyReading(Random random, int hour, int minute, double known, double rainy)
    {
        double dryBulbC = 18 + 6 * Math.Cos((hour - 14) * Math.PI / 12) + 2 * random.NextDouble();
        return new WeatherReading(
            InventedDays.At(hour).AddMinutes(minute),
            Some(random, known, dryBulbC),
            Some(random, known, dryBulbC - 10 * random.NextDouble()),
            RainMm: Some(random, known, random.NextDouble() < rainy ? 5 * random.NextDouble() : 0),
            WindMPerS: Some(random, known, 6 * random.NextDouble()),
            ShortwaveWPerM2: Some(random, known * 0.8, hour % 24 is > 6 and < 18 ? 800 * random.NextDouble() : 0));
    }

    private static RainTotal AnyTotal(Random random, int days)
    {
        double from = -random.Next(1, 24 * days + 24);
        return new(InventedDays.At(from), InventedDays.At(from + random.Next(1, 100)), 40 * random.NextDouble());
    }

    private static double? Some(Random random, double known, double value) => random.NextDouble() < known ? value : null;

    private static WeatherReading WildReading(Random random) => new(
        AnyTime(random),
        AnyValue(random),
        AnyValue(random),
        AnyValue(random),
        AnyValue(random),
        AnyValue(random),
        AnyValue(random),
        AnyValue(random),
        AnyValue(random));

    private static double? AnyValue(Random random) => random.Next(3) == 0
        ? 100 * random.NextDouble()
        : WildValues[random.Next(WildValues.Length)];

    private static DateTimeOffset AnyTime(Random random) => random.Next(12) switch
    {
        0 => DateTimeOffset.MinValue,
        1 => DateTimeOffset.MaxValue,
        _ => InventedDays.At(-240 + 260 * random.NextDouble()),
    };
}
