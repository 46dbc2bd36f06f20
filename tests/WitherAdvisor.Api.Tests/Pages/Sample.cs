using WitherAdvisor.Advice;
using WitherAdvisor.Air;
using WitherAdvisor.Api.Pages;
using WitherAdvisor.Api.Pages.Advice;
using WitherAdvisor.Leaf;
using WitherAdvisor.LeafAtLoading;
using WitherAdvisor.Loft.Kept.Batches;
using WitherAdvisor.Loft.Kept.Sites;
using WitherAdvisor.Plans;
using WitherAdvisor.Plans.Explaining;
using WitherAdvisor.Plans.Uncertainty;
using WitherAdvisor.Plans.Writing;
using WitherAdvisor.Readings;
using WitherAdvisor.Sites;
using WitherAdvisor.Spells;
using WitherAdvisor.Store;
using WitherAdvisor.Words;
using WitherAdvisor.Words.Units;

namespace WitherAdvisor.Api.Tests.Pages;

/// <summary>An invented advice with figures chosen to be told apart on a page; no model made it.</summary>
internal static class Sample
{
    private const double UsualHotAirC = WitherAdvisor.Sites.Site.UsualHotAirC;

    public static readonly DateTimeOffset LoadedAt = new(2026, 7, 14, 10, 40, 0, TimeSpan.Zero);

    public static StoredSite Site { get; } = new(
        "invented-hill", "Invented Hill", "Asia/Colombo", new Site(1500, 6.9, 80.7, UsualHotAirC, WitherStyle.Short));

    public static StoredTrough Trough { get; } = new(Site.Id, "t2", "Trough 2", new Trough(42));

    public static StoredBatch Batch { get; } = new(
        "b-1", Site.Id, Trough.Id,
        new Batch(
            new LeafLabel("Lower division", "Field 7", "Invented 2025", BushAge.Mature, LeafStandard.Fine),
            LoadedAt.AddHours(-6), LoadedAt.AddHours(-1), LoadedAt, 1176, SurfaceFeel: SurfaceFeel.Wet),
        LoadedAt);

    public static LeafEstimate Leaf { get; } = new(
        new Estimate(0.20, 0.06, EstimateOrigin.FromWeather, [new("rain", 0.17), new("dew", 0.03)]),
        new Estimate(0.80, 0.012, EstimateOrigin.FromWeather, [new("wet_season", 0.80), new("drought", 0.0)]),
        new Spell(SpellKind.Wet, 61, 118, 1.0, 0.04, 0.4, 2.1),
        [new Assumption.NoRadiation(72)]);

    public static IReadOnlyList<AirSetting> Settings { get; } = [.. Enumerable.Range(0, 13).Select(Setting)];

    public static WitherPlan Plan { get; } = new(
        [new(StageKind.SurfaceDrying, 0, 4, 9.0), new(StageKind.Main, 4, 12, 7.2), new(StageKind.Cooling, 12, 12.4, null)],
        Settings, 2, [2, 4, 6, 8, 10, 12], 12.4, 1, 7.6, 402, 0.027, 0.417, 0.5);

    public static AdviceOutcome.Advised Advised { get; } = new(
        Plan, Curve(), new Percentiles(10.9, 12.2, 14.3), new Percentiles(0.572, 0.6, 0.631),
        [
            new("without_surface_water", -2.4, -1.2, 1),
            new("at_sea_level", 0.9, 0, 2),
            new("spread_a_fifth_thinner", 0.01, null, 2),
        ],
        [
            new WeighingCheck(4, 1004, 961, 1046, 8.54, new(10.4, -1.5), new(14.1, 1.1)),
            new WeighingCheck(9, 640, 604, 688, 5.44, new(11.1, -2.0), new(null, null)),
        ],
        [new LimitNotice(LimitKind.Spread, 0.03, 0.027), new LimitNotice(LimitKind.WantedHygrometricDifference, 7.2, 9.0)],
        [new Relief(ReliefKind.RollLater, 1.5)], Leaf, [new Assumption.AirNotForecast(11, 12, 11, 0)], "defaults-1", 1840);

    public static AdviceOutcome.CannotAdvise Refused { get; } = new(
        [new LimitNotice(LimitKind.LongestTimeSincePlucking, 24, 27.3), new LimitNotice(LimitKind.PlenumDryBulb, 35, 35)],
        [new Relief(ReliefKind.SpreadThinner, 19), new Relief(ReliefKind.ReadAmbientAir, null)],
        Leaf, [], "defaults-1", 960);

    public static AdviceView View(AdviceOutcome? outcome = null, PersonUnits? units = null, double hoursNow = 0.2, StoredBatch? batch = null) => new(
        Site, Trough, batch ?? Batch, outcome ?? Advised, LoadedAt, [],
        new PageContext(units ?? PersonUnits.Usual, Wordbook.English, "/batches/b-1", LoadedAt.AddHours(hoursNow)))
    {
        ModelVersion = WitherAdvisor.Loft.Advising.ModelVersion.Current,
    };

    private static AirSetting Setting(int hour)
    {
        AirState ambient = AirState.FromRelativeHumidity(18.4 - 0.2 * hour, 0.95, StandardAtmosphere.PressurePa(1500));
        StageKind stage = hour < 4 ? StageKind.SurfaceDrying : hour < 12 ? StageKind.Main : StageKind.Cooling;
        AirState plenum = stage == StageKind.Cooling
            ? ambient
            : HotAirMix.PlenumForHygrometricDifference(ambient, stage == StageKind.SurfaceDrying ? 9.0 : 7.2);
        return new AirSetting(hour, stage, ambient, plenum, HotAirMix.Share(ambient, 52.8, plenum.DryBulbC), HotAirMix.HeatKW(ambient, plenum, 9.6));
    }

    private static List<CurvePoint> Curve()
    {
        List<CurvePoint> curve = [];
        for (int step = 0; step <= 124; step++)
        {
            double hour = step / 10.0;
            double share = hour / 12.4;
            double mean = 0.80 - 0.2 * Math.Pow(share, 1.3);
            double sinceTurn = hour % 2;
            double lean = (sinceTurn - 0.7) * 0.011 * Math.Min(1, hour / 2);
            double water = Math.Max(0, 0.2 * (1 - hour / 4.6));
            curve.Add(new CurvePoint(
                hour, mean - lean, mean, mean + lean, (mean + water * 0.2 / 1.2) + 0.0, water, 1176 * (1 - 0.58 * share), 20 + 3 * share));
        }

        return curve;
    }
}
