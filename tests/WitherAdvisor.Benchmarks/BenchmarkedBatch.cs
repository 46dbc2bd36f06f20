using WitherAdvisor.Advice;
using WitherAdvisor.Air;
using WitherAdvisor.Ambient;
using WitherAdvisor.Bed;
using WitherAdvisor.InventedEstate;
using WitherAdvisor.Leaf;
using WitherAdvisor.LeafAtLoading;
using WitherAdvisor.Plans.Search;
using WitherAdvisor.Plans;
using WitherAdvisor.Sites;

namespace WitherAdvisor.Benchmarks;

/// <summary>A batch of the invented estate: two weeks of hourly weather, sixty days of rain before, a forecast of 24 h.</summary>
internal sealed class BenchmarkedBatch
{
    /// <summary>A cut that anybody would begin with: fifty layers, one minute. The bed's reference cases are cut so.</summary>
    public static readonly BedResolution ReferenceCut = new(50, 60);

    private const double HorizonHours = 30;

    private readonly PlanProblem problem;
    private readonly SaturationTable saturation;
    private readonly PlenumSchedule air;

    public BenchmarkedBatch(string id)
    {
        Request = EstateRequest.Read(Path.Combine(AppContext.BaseDirectory, "fixtures", "invented-estate"), id);
        Batch batch = Request.Batch;
        LeafEstimate leaf = Leaf();
        AmbientForecast night = ForecastAhead.Of(Request.Site, batch.LoadedAt, Request.Readings, new(Request.Forecast, 0, 0), HorizonHours).Ambient!;
        problem = new(
            new LeafState(leaf.TissueMoistureWetBasis.Value, leaf.SurfaceWaterKgPerKg.Value), batch.GreenWeightKg / Request.Trough.AreaM2,
            Request.Trough, Request.Site.Style, HeatSupply.Plenty(Request.Site.HotAirC), night, Request.Coefficients, 0, HorizonHours, null);
        saturation = new(night.PressurePa, night.Hours[0].Formulation);
        air = PlenumSchedule.ForDifference(night, Request.Site.Style.WantedHygrometricDifferenceK, (_, _) => HardLimits.SetPointCeilingC(Request.Site.Style));
    }

    public AdviceRequest Request { get; }

    /// <summary>The same with its hourly readings going back ten weeks instead of two: the two over and over.</summary>
    public AdviceRequest RequestWithTenWeeksOfReadings => Request with
    {
        Readings =
        [.. Enumerable.Range(0, 5).Reverse().SelectMany(times =>
            Request.Readings.Select(reading => reading with { Time = reading.Time.AddDays(-14 * times) }))],
        RainTotals = [],
    };

    /// <summary>What the weather did to its leaf.</summary>
    public LeafEstimate Leaf() => LeafFromWeather.Estimate(
        Request.Site, Request.Readings, Request.RainTotals,
        new(Request.Batch.PluckedFrom, Request.Batch.PluckedTo, Request.Batch.LoadedAt, Request.Batch.Label.Standard),
        Request.Coefficients);

    /// <summary>Hours to target of one bed under the site's wanted air, turned every two hours.</summary>
    public double? HoursToTarget(BedResolution resolution)
    {
        const int TurnEveryHours = 2;
        return TrialWither.Run(
            problem.Bed(saturation, resolution), new(air, air, TurnRule.Every(TurnEveryHours, HorizonHours), problem.TargetDryBasis, 0, HorizonHours)).TargetHour;
    }
}
