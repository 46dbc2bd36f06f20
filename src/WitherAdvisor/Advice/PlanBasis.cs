using WitherAdvisor.Ambient;
using WitherAdvisor.Bed;
using WitherAdvisor.Leaf;
using WitherAdvisor.LeafAtLoading;
using WitherAdvisor.Plans.Search;
using WitherAdvisor.Readings;
using WitherAdvisor.Readings.Sources;
using WitherAdvisor.Screening;
using WitherAdvisor.Sites;
using WitherAdvisor.Spells;

namespace WitherAdvisor.Advice;

/// <summary>What a plan is chosen on: the leaf, the air ahead and the hours that are left.</summary>
/// <param name="Lots">The leaf of each lot at its own loading, in order; one where all was loaded at once.</param>
/// <param name="Leaf">At loading, the mean of all lots.</param>
/// <param name="Ahead">The air from loading on.</param>
/// <param name="Assumptions">What was not known and what was taken in its place.</param>
/// <param name="LongestHours">Latest stop that the chemical wither allows, hours from loading.</param>
internal sealed record PlanBasis(
    IReadOnlyList<LeafEstimate> Lots, LeafEstimate Leaf, ForecastAhead Ahead, IReadOnlyList<Assumption> Assumptions, double LongestHours)
{
    /// <summary>Air is looked for this far past the latest stop, h, so that cases that lag can be followed to their end.</summary>
    private const double HoursBeyond = 6;

    /// <summary>And so far at least, h: leaf over its time has a least bad plan too.</summary>
    private const double LeastHoursAhead = 12;

    /// <summary>The limits of the chemical wither hold for the oldest and the youngest leaf alike.</summary>
    private bool IsAllOfDryWindySpell => Lots.All(leaf => leaf.Spell.Kind == SpellKind.DryWindy);

    public static PlanBasis Of(AdviceRequest request)
    {
        Batch batch = request.Batch;
        var weather = ScreenedWeather.Of(request.Site, request.Readings);
        IReadOnlyList<WeatherReading> unread = GapFilling.Of(weather.Readings, request.RainTotals, request.Forecast);
        IReadOnlyList<WeatherReading> standIns = UpTo(unread, batch.LoadedAt);
        BiasCorrectedForecast moved = BiasCorrectedForecast.Of(weather.Readings, request.Forecast, unread, batch.LoadedAt, request.Site.PressurePa);
        IReadOnlyList<LeafEstimate> lots = [.. batch.EachLot.Select(lot => EstimateLeaf(request, weather, lot, UpTo(unread, lot.LoadedAt)))];
        LeafEstimate leaf = LeafOfLots.Mean([.. batch.EachLot.Zip(lots, (lot, estimate) => (lot.GreenWeightKg, estimate))]);
        double longest = request.Site.Style.LongestHoursSincePlucking - (batch.LoadedAt - batch.PluckedFrom).TotalHours;
        ForecastAhead ahead = ForecastAhead.Of(
            request.Site, batch.LoadedAt, weather.Readings, moved, Math.Max(longest, LastLotHour(batch) + LeastHoursAhead) + HoursBeyond);
        IEnumerable<Assumption> stale = StaleWeather.Of(weather.Readings, standIns, batch.LoadedAt);
        return new(lots, leaf, ahead, [.. leaf.Missing, .. stale, .. ahead.Assumptions, .. OfLots(batch)], longest);
    }

    /// <summary>The problem to search a plan for, in a night that is known.</summary>
    public PlanProblem Problem(AdviceRequest request, AmbientForecast ambient)
    {
        Batch batch = request.Batch;
        WitherStyle style = request.Site.Style;
        double shortest = IsAllOfDryWindySpell
            ? style.ShortestHoursSincePluckingInDryWindySpell
            : style.ShortestHoursSincePlucking;
        return new(
            StateOf(Lots[0]),
            batch.GreenWeightKg / request.Trough.AreaM2,
            request.Coefficients.AsItBlows(request.Trough),
            style,
            Heat(request),
            ambient,
            request.Coefficients,
            shortest - (batch.LoadedAt - batch.PluckedTo).TotalHours,
            LongestHours,
            (batch.ReadyBy - batch.LoadedAt)?.TotalHours)
        {
            Later =
            [
                .. batch.EachLot.Zip(Lots, (lot, leaf) => new LaidLot(
                    (lot.LoadedAt - batch.LoadedAt).TotalHours, StateOf(leaf), lot.GreenWeightKg / request.Trough.AreaM2)).Skip(1),
            ],
        };
    }

    /// <summary>The heat for a square metre of the trough: what reaches the trough, of all that the loft has.</summary>
    private static HeatSupply Heat(AdviceRequest request)
    {
        HeatSource source = request.Site.Heat;
        double? most = request.Trough.HeaterKW is { } ofTrough ? Math.Min(ofTrough, source.LoftKW ?? ofTrough) : source.LoftKW;
        DateTimeOffset loaded = request.Batch.LoadedAt;
        return new(
            request.Site.HotAirC, most / request.Trough.AreaM2,
            source.Spans is null ? null : [.. source.Spans.Select(span => ((span.From - loaded).TotalHours, (span.To - loaded).TotalHours))]);
    }

    private static LeafEstimate EstimateLeaf(AdviceRequest request, ScreenedWeather weather, LeafLot lot, IReadOnlyList<WeatherReading> standIns) =>
        LeafWithGapsFilled.Estimate(
            request.Site, weather, standIns, request.RainTotals,
            new(lot.PluckedFrom!.Value, lot.PluckedTo!.Value, lot.LoadedAt, lot.Label?.Standard,
                lot.MeasuredSurfaceWaterKgPerKg, lot.SurfaceFeel, lot.MeasuredMoistureWetBasis),
            request.Coefficients);

    private static LeafState StateOf(LeafEstimate leaf) => new(leaf.TissueMoistureWetBasis.Value, leaf.SurfaceWaterKgPerKg.Value);

    private static IReadOnlyList<WeatherReading> UpTo(IReadOnlyList<WeatherReading> readings, DateTimeOffset time) =>
        [.. readings.Where(reading => reading.Time <= time)];

    private static IEnumerable<Assumption> OfLots(Batch batch)
    {
        IReadOnlyList<LeafLot> expected = [.. batch.Lots.Where(lot => lot.IsExpected)];
        if (expected.Count > 0)
        {
            yield return new Assumption.LotsExpected(expected.Count, expected.Sum(lot => lot.GreenWeightKg));
        }

        int unsaid = batch.Lots.Count(lot => lot.PluckedFrom is null || lot.PluckedTo is null);
        if (unsaid > 0)
        {
            yield return new Assumption.PluckingOfLotsUnknown(unsaid);
        }
    }

    private static double LastLotHour(Batch batch) => (batch.LastLoadedAt - batch.LoadedAt).TotalHours;
}
