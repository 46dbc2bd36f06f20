using WitherAdvisor.Ambient;
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
/// <param name="Leaf">At loading.</param>
/// <param name="Ahead">The air from loading on.</param>
/// <param name="Assumptions">What was not known and what was taken in its place.</param>
/// <param name="LongestHours">Latest stop that the chemical wither allows, hours from loading.</param>
internal sealed record PlanBasis(
    LeafEstimate Leaf, ForecastAhead Ahead, IReadOnlyList<Assumption> Assumptions, double LongestHours)
{
    /// <summary>Air is looked for this far past the latest stop, h, so that cases that lag can be followed to their end.</summary>
    private const double HoursBeyond = 6;

    /// <summary>And so far at least, h: leaf over its time has a least bad plan too.</summary>
    private const double LeastHoursAhead = 12;

    public static PlanBasis Of(AdviceRequest request)
    {
        Batch batch = request.Batch;
        var weather = ScreenedWeather.Of(request.Site, request.Readings);
        IReadOnlyList<WeatherReading> unread = GapFilling.Of(weather.Readings, request.RainTotals, request.Forecast);
        IReadOnlyList<WeatherReading> standIns = [.. unread.Where(reading => reading.Time <= batch.LoadedAt)];
        BiasCorrectedForecast moved = BiasCorrectedForecast.Of(weather.Readings, request.Forecast, unread, batch.LoadedAt, request.Site.PressurePa);
        LeafEstimate leaf = EstimateLeaf(request, weather, standIns);
        double longest = request.Site.Style.LongestHoursSincePlucking - (batch.LoadedAt - batch.PluckedFrom).TotalHours;
        ForecastAhead ahead = ForecastAhead.Of(request.Site, batch.LoadedAt, weather.Readings, moved, Math.Max(longest, LeastHoursAhead) + HoursBeyond);
        return new(
            leaf, ahead, [.. leaf.Missing, .. StaleWeather.Of(weather.Readings, standIns, batch.LoadedAt), .. ahead.Assumptions], longest);
    }

    /// <summary>The problem to search a plan for, in a night that is known.</summary>
    public PlanProblem Problem(AdviceRequest request, AmbientForecast ambient)
    {
        Batch batch = request.Batch;
        WitherStyle style = request.Site.Style;
        double shortest = Leaf.Spell.Kind == SpellKind.DryWindy
            ? style.ShortestHoursSincePluckingInDryWindySpell
            : style.ShortestHoursSincePlucking;
        return new(
            new LeafState(Leaf.TissueMoistureWetBasis.Value, Leaf.SurfaceWaterKgPerKg.Value),
            batch.GreenWeightKg / request.Trough.AreaM2,
            request.Coefficients.AsItBlows(request.Trough),
            style,
            Heat(request),
            ambient,
            request.Coefficients,
            shortest - (batch.LoadedAt - batch.PluckedTo).TotalHours,
            LongestHours,
            (batch.ReadyBy - batch.LoadedAt)?.TotalHours);
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

    private static LeafEstimate EstimateLeaf(AdviceRequest request, ScreenedWeather weather, IReadOnlyList<WeatherReading> standIns)
    {
        Batch batch = request.Batch;
        return LeafWithGapsFilled.Estimate(
            request.Site, weather, standIns, request.RainTotals,
            new(batch.PluckedFrom, batch.PluckedTo, batch.LoadedAt, batch.Label.Standard,
                batch.MeasuredSurfaceWaterKgPerKg, batch.SurfaceFeel, batch.MeasuredMoistureWetBasis),
            request.Coefficients);
    }
}
