using WitherAdvisor.Advice;
using WitherAdvisor.InventedEstate;
using WitherAdvisor.Leaf;
using WitherAdvisor.LeafAtLoading;
using WitherAdvisor.Readings;
using WitherAdvisor.Sites;

namespace WitherAdvisor.SyntheticSeasons;

/// <summary>A batch as the advice is asked for it, beside what is true of it.</summary>
/// <param name="Request">What the service would be told.</param>
/// <param name="Truth">What nobody tells it.</param>
/// <param name="Leaf">The true leaf at loading.</param>
/// <param name="Air">The true air from loading on.</param>
public sealed record SyntheticBatch(AdviceRequest Request, HiddenTruth Truth, LeafState Leaf, IReadOnlyList<WeatherReading> Air)
{
    private const int HistoryDays = 62;
    private const int HoursAhead = 40;

    /// <summary>The batch of a number: each has its own weather, loft and leaf.</summary>
    /// <param name="wider">Factor on the spreads of what is hidden.</param>
    /// <param name="skinOff">Logarithm by which its g_0 is off, one way or the other; drawn like the rest when null.</param>
    public static SyntheticBatch Draw(ulong number, double wider = 1, double? skinOff = null)
    {
        var random = new SplitMix64(0x5EA50 + number * 7919);
        IReadOnlyList<HourOfWeather> weather = Season.Make(HistoryDays + 4, random);
        HiddenTruth truth = HiddenTruth.Draw(random, wider).WithSkinOff(skinOff);
        DateTimeOffset loadedAt = Season.FirstMidnight.AddDays(HistoryDays).AddHours(11 + Math.Floor(random.NextFraction() * 10));
        DateTimeOffset pluckedTo = loadedAt.AddHours(-random.Between(0.5, 3));
        DateTimeOffset pluckedFrom = pluckedTo.AddHours(-random.Between(1, 4));
        IReadOnlyList<HourOfWeather> before = [.. weather.Where(hour => hour.Time <= loadedAt)];
        IReadOnlyList<HourOfWeather> after = [.. weather.Where(hour => hour.Time > loadedAt.AddHours(-1) && hour.Time <= loadedAt.AddHours(HoursAhead))];

        var site = new Site(1_500, 7.0, 80.7, Site.UsualHotAirC, random.NextFraction() < 0.7 ? WitherStyle.Short : WitherStyle.Long);
        LeafState leaf = TrueLeaf(site, before, new(pluckedFrom, pluckedTo, loadedAt, LeafStandard.Fine), truth);
        var trough = new Trough(40, Trough.UsualAirflowM3PerSM2, random.NextFraction() < 0.5 ? 1 : 0.6);
        var batch = new Batch(
            new("invented", $"field {number}", null, null, LeafStandard.Fine), pluckedFrom, pluckedTo, loadedAt,
            Math.Round(trough.AreaM2 * random.Between(15, 32)),
            MeasuredSurfaceWaterKgPerKg: random.NextFraction() < 0.15 ? Math.Max(leaf.SurfaceWaterKgPerKg + random.Around(0, 0.02), 0) : null,
            SurfaceFeel: random.NextFraction() < 0.3 ? Felt(leaf.SurfaceWaterKgPerKg + random.Around(0, 0.02)) : null,
            MeasuredMoistureWetBasis: random.NextFraction() < 0.15 ? leaf.TissueMoistureWetBasis + random.Around(0, 0.01) : null);
        bool forecast = random.NextFraction() < 0.8;
        return new(
            new(site, trough, batch, Observed.Read(before, random), [], forecast ? Observed.Forecast(after, random) : [], new()),
            truth, leaf, [.. after.Select(Observed.Truly)]);
    }

    private static LeafState TrueLeaf(Site site, IReadOnlyList<HourOfWeather> before, PluckedLeaf plucked, HiddenTruth truth)
    {
        LeafEstimate estimate = LeafFromWeather.Estimate(
            site, [.. before.Select(hour => Observed.AtTheField(hour, truth.DemandFactor))], [], plucked, truth.Coefficients);
        return new(
            estimate.TissueMoistureWetBasis.Value + truth.TissueShiftWetBasis,
            Math.Max(estimate.SurfaceWaterKgPerKg.Value + truth.SurfaceShiftKgPerKg, 0));
    }

    internal static SurfaceFeel Felt(double kgPerKg) => kgPerKg switch
    {
        < 0.025 => SurfaceFeel.Dry,
        < 0.105 => SurfaceFeel.Damp,
        < 0.19 => SurfaceFeel.Wet,
        _ => SurfaceFeel.Dripping,
    };
}
