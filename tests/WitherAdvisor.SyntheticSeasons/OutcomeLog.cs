using WitherAdvisor.Air;
using WitherAdvisor.Bed;
using WitherAdvisor.Coefficients;
using WitherAdvisor.InventedEstate;
using WitherAdvisor.Leaf;
using WitherAdvisor.LeafAtLoading;
using WitherAdvisor.Outcomes;
using WitherAdvisor.Recalibration;
using WitherAdvisor.Sites;
using WitherAdvisor.Spells;

namespace WitherAdvisor.SyntheticSeasons;

/// <summary>A loft's log over its nights: withers by hidden coefficients, written down with errors and gaps.</summary>
/// <remarks>
/// Leaf parts from what its weather says (moisture 1 point, surface water 0.012 kg/kg); the wanted difference is held to
/// 0.4 K; air is read to 0.3 K, weights to 1 %, oven samples to 0.5 points. People stop half-way between when the defaults
/// say and when the leaf is ready. Withered weights are missing in 15 of 100, oven tests in 60; 5 in 100 are grossly wrong.
/// </remarks>
public static class OutcomeLog
{
    public const double TargetWetBasis = 0.60;

    private const double HighestPlenumC = 35;

    // Finer than the fit's own, so that the fit is not tested against itself.
    private static readonly BedResolution Cut = new(12, 600);

    public static IReadOnlyList<LoggedWither> Write(HiddenLoft loft, IReadOnlyList<LoftNight> nights, SplitMix64 random, double grossShare = 0.05) =>
        [.. nights.Select((night, i) => One(loft, night, i, random, grossShare))];

    private static LoggedWither One(HiddenLoft loft, LoftNight night, int number, SplitMix64 random, double grossShare)
    {
        (string cultivar, LeafStandard standard) = HiddenLoft.DrawLeaf(random);
        (double skin, double moisture) = loft.Groups[(cultivar, standard)];
        WitherCoefficients truth = loft.Site with { CuticularConductanceMPerS = loft.Site.CuticularConductanceMPerS * Math.Exp(skin) };
        LeafState leaf = Leaf(night.Truly with { Standard = standard }, truth, moisture + random.Around(0, 0.01), random.Around(0, 0.012));
        LeafState told = Leaf(night.AsRead with { Standard = standard }, new(), 0, 0);
        InletAir[] held = Held(night, loft.WantedDifferenceK, random.Around(0, 0.4));
        double[] turns = [.. Enumerable.Range(1, 39).Select(hour => (double)hour * TurnEveryHours(night.Spell))];
        double load = random.Between(15, 32);
        var trough = new Trough(40);
        BedSetup setup = Bed(leaf, load, trough, truth, night.Ambient[0].PressurePa);
        double? ready = new GivenWither(setup, new(held), turns).RunToWater(Moisture.DryBasis(TargetWetBasis), LoftNight.HoursAhead);
        double? thought = new GivenWither(Bed(told, load, trough, new(), night.Ambient[0].PressurePa), new(held), turns)
            .RunToWater(Moisture.DryBasis(TargetWetBasis), LoftNight.HoursAhead);
        double stop = Math.Sqrt((ready ?? LoftNight.HoursAhead) * (thought ?? LoftNight.HoursAhead)) * Math.Exp(random.Around(0, 0.05));
        stop = Math.Clamp(Math.Round(stop * 4) / 4, 2.5, 34);
        ObservedWither noted = new(
            $"invented-{number:00000}", night.LoadedAt, night.Spell, cultivar, standard,
            night.AsRead with { Standard = standard }, Readings(leaf, random),
            load * trough.AreaM2 * (1 + random.Around(0, 0.01)), trough.AreaM2, trough.AirflowM3PerSM2, night.Ambient[0].PressurePa,
            Read(held, stop, random), true, [.. turns.TakeWhile(hour => hour < stop)], stop,
            Found(new(setup, new(held), turns), load * trough.AreaM2, leaf, stop, random));
        bool wrong = random.NextFraction() < grossShare;
        return new(wrong ? GrossMistake.In(noted, random) : noted, ready, wrong);
    }

    private static LeafState Leaf(LeafFeatures features, WitherCoefficients set, double tissueShift, double surfaceShift) => new(
        features.TissueMoistureWetBasis(set).Value + tissueShift,
        Math.Max(features.SurfaceWaterKgPerKg(set).Value + surfaceShift, 0));

    private static int TurnEveryHours(SpellKind spell) => spell == SpellKind.DryWindy ? 1 : 2;

    private static BedSetup Bed(LeafState leaf, double load, Trough trough, WitherCoefficients set, double pressurePa) => new(
        leaf, leaf.DryMatterKg(load), set.AsItBlows(trough).AirflowM3PerSM2, pressurePa,
        new(pressurePa, MoistAirFormulation.RealGas), set, Cut.Layers, Cut.LongestStepS);

    private static InletAir[] Held(LoftNight night, double wantedK, double missedK) =>
    [
        .. night.Ambient.Select(ambient =>
        {
            AirState plenum = HotAirMix.PlenumForHygrometricDifference(ambient, wantedK + missedK);
            return new InletAir(Math.Max(Math.Min(plenum.DryBulbC, HighestPlenumC), ambient.DryBulbC), ambient.HumidityRatio);
        }),
    ];

    private static InletAir[] Read(InletAir[] held, double stop, SplitMix64 random)
    {
        double allNightK = random.Around(0, 0.3);
        return
        [
            .. held.Take((int)Math.Ceiling(stop) + 1).Select(air => new InletAir(
                air.DryBulbC + allNightK + random.Around(0, 0.2), air.HumidityRatio * (1 + random.Around(0, 0.01)))),
        ];
    }

    private static LoadingReadings Readings(LeafState leaf, SplitMix64 random) => new(
        random.NextFraction() < 0.10 ? Math.Max(leaf.SurfaceWaterKgPerKg + random.Around(0, 0.02), 0) : null,
        random.NextFraction() < 0.10 ? leaf.TissueMoistureWetBasis + random.Around(0, 0.01) : null,
        random.NextFraction() < 0.25 ? SyntheticBatch.Felt(leaf.SurfaceWaterKgPerKg + random.Around(0, 0.02)) : null);

    private static WitherFindings Found(GivenWither wither, double greenKg, LeafState leaf, double stop, SplitMix64 random)
    {
        double start = 1 + wither.WaterDryBasis;
        wither.RunTo(2);
        double at2 = (1 + wither.WaterDryBasis) / start + random.Around(0, 0.01);
        wither.RunTo(stop);
        double weight = leaf.DryMatterKg(greenKg) * (1 + wither.WaterDryBasis) * (1 + random.Around(0, 0.01));
        (double bottom, double middle, double top) = wither.Bed.TissueByHeightWetBasis();
        double Sampled(double wetBasis) => wetBasis + random.Around(0, 0.007);
        LayerMoistures heights = new(Sampled(bottom), Sampled(middle), Sampled(top));
        double oven = Moisture.WetBasis(wither.WaterDryBasis) + random.Around(0, 0.005);
        bool hasWeight = random.NextFraction() < 0.85;
        bool hasOven = random.NextFraction() < 0.40 || !hasWeight;
        return new(
            hasWeight ? weight : null, hasOven ? oven : null, random.NextFraction() < 0.15 ? heights : null,
            random.NextFraction() < 0.20 ? [new SampleWeighing(2, at2)] : null);
    }
}
