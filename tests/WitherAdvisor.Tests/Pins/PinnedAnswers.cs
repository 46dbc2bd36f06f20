using WitherAdvisor.Advice;
using WitherAdvisor.Coefficients;
using WitherAdvisor.InventedEstate;
using WitherAdvisor.Leaf;
using WitherAdvisor.LeafAtLoading;
using WitherAdvisor.Readings;
using WitherAdvisor.Readings.Sources;
using WitherAdvisor.Review;
using WitherAdvisor.Sensitivities;
using WitherAdvisor.Simulations;
using WitherAdvisor.Sites;
using WitherAdvisor.Tests.Advice;
using WitherAdvisor.Tests.LeafAtLoading;
using WitherAdvisor.Tests.Properties;

namespace WitherAdvisor.Tests.Pins;

/// <summary>The answers that are pinned, by name. All batches and weather are invented.</summary>
internal static class PinnedAnswers
{
    private static readonly string Estate = Path.Combine(AppContext.BaseDirectory, "fixtures", "invented-estate");

    public static IReadOnlyDictionary<string, Func<object>> All { get; } = new Dictionary<string, Func<object>>
    {
        ["advice-rain-wet"] = () => Advisor.Advise(EstateRequest.Read(Estate, "rain-wet")),
        ["advice-dry-windy"] = () => Advisor.Advise(EstateRequest.Read(Estate, "dry-windy")),
        ["advice-ordinary"] = () => Advisor.Advise(EstateRequest.Read(Estate, "ordinary")),
        ["advice-long-style"] = () => Advisor.Advise(InventedBatch.Measured(24, 0.85, 0.78, 0.1, 20, 600, WitherStyle.Long)),
        ["advice-late-for-rolling"] = () => Advisor.Advise(ReadyBy(InventedBatch.Measured(19, 0.82, 0.78, 0.1), 6)),
        ["advice-in-time-for-rolling"] = () => Advisor.Advise(ReadyBy(InventedBatch.Measured(19, 0.75, 0.76, 0), 14)),
        ["advice-slow-and-long"] = () => Advisor.Advise(InventedBatch.Measured(16, 0.97, 0.82, 0.3, 40)),
        ["advice-air-unknown"] = () => Advisor.Advise(InventedBatch.Measured(16, 0.97, 0.82, 0.3) with { Readings = [], Forecast = [] }),
        ["advice-half-read"] = () => Advisor.Advise(HalfRead()),
        ["sensitivity-ordinary"] = () => SensitivityAnalysis.Of(EstateRequest.Read(Estate, "ordinary"))!,
        ["sensitivity-rain-wet"] = () => SensitivityAnalysis.Of(EstateRequest.Read(Estate, "rain-wet"))!,
        ["simulation"] = () => WitherSimulation.Run(Simulation())!,
        ["leaf-histories"] = () => Enumerable.Range(1, 24).Select(seed => Leaf(AnyHistory.Of(seed))).ToList(),
        ["advice-drawn"] = () => Enumerable.Range(1, 24).Select(seed => Told(Advisor.Advise(Drawn(new Random(seed))))).ToList(),
        ["advice-declared-domain"] = () => Enumerable.Range(1, 20).Select(seed => Advisor.Advise(AnyDeclared.Of(seed))).ToList(),
        ["weather-review"] = Review,
    };

    private static AdviceRequest ReadyBy(AdviceRequest request, double hours) =>
        request with { Batch = request.Batch with { ReadyBy = request.Batch.LoadedAt.AddHours(hours) } };

    /// <summary>A week of which every third reading is missing, rain by gauge alone, the last hours forecast, wet to the hand.</summary>
    private static AdviceRequest HalfRead()
    {
        AdviceRequest request = EstateRequest.Read(Estate, "rain-wet");
        DateTimeOffset loaded = request.Batch.LoadedAt;
        WeatherReading[] read = [.. request.Readings.Where((_, i) => i % 3 > 0).Where(reading => (loaded - reading.Time).TotalHours is > 5 and < 170)];
        return request with
        {
            Readings = [.. read.Select(reading => reading with { RainMm = null })],
            RainTotals = [new(loaded.AddDays(-7), loaded.AddDays(-2), 60), new(loaded.AddDays(-2), loaded.AddHours(-8), 12)],
            Forecast = [.. request.Readings.Where(reading => reading.Time > loaded.AddHours(-9)), .. request.Forecast],
            Batch = request.Batch with { MeasuredSurfaceWaterKgPerKg = null, SurfaceFeel = SurfaceFeel.Wet },
        };
    }

    private static SimulationRequest Simulation()
    {
        AdviceRequest request = EstateRequest.Read(Estate, "ordinary");
        return new(
            request.Site, request.Trough, request.Batch.GreenWeightKg, new(0.775, 0.08), request.Batch.LoadedAt, request.Forecast,
            [new(3, PlenumDryBulbC: 27), new(9, HygrometricDifferenceK: 4), new(10)], [2, 5, 8], 0.8, request.Coefficients);
    }

    private static object Leaf(History history) => new
    {
        Estimate = history.Estimate(),
        Features = LeafFromWeather.Features(InventedDays.Site, history.Readings, history.Totals, history.Leaf, 0.2),
    };

    /// <summary>A batch drawn at random, in air that cools and damps toward morning, of a site that keeps its own limits and coefficients.</summary>
    private static AdviceRequest Drawn(Random random)
    {
        double In(double low, double high) => low + (high - low) * random.NextDouble();
        double dryBulbC = In(12, 34);
        double humidity = In(0.4, 0.97);
        AdviceRequest request = InventedBatch.Measured(dryBulbC, humidity, In(0.73, 0.82), Math.Max(In(-0.2, 0.3), 0), In(12, 33), In(0, 2_400));
        return ReadyBy(request, In(5, 24)) with
        {
            Site = request.Site with { Style = DrawnStyle(In) },
            Forecast = [.. request.Forecast.Select((reading, hour) => reading with
            {
                DryBulbC = dryBulbC - Math.Min(hour, 10) * 0.5,
                RelativeHumidity = Math.Min(humidity + 0.01 * hour, 1),
            })],
            Coefficients = CoefficientCatalogue.All.Aggregate(request.Coefficients, (set, coefficient) =>
                coefficient.With(set, coefficient.Default + In(-0.2, 0.2) * (coefficient.High - coefficient.Default))),
        };
    }

    private static WitherStyle DrawnStyle(Func<double, double, double> within) => new()
    {
        WantedHygrometricDifferenceK = within(2, 5),
        TargetMoistureWetBasis = within(0.6, 0.7),
        PlenumCeilingC = within(28, 35),
        HygrometricDifferenceCeilingK = within(5, 9),
        WetLeafHygrometricDifferenceCeilingK = within(5, 10),
        ShortestHoursSincePlucking = within(0, 12),
        LongestHoursSincePlucking = within(14, 26),
        ToleratedSpreadWetBasis = within(0.02, 0.08),
        CoolingHours = within(0, 1),
    };

    /// <summary>The heart of an answer: two dozen whole ones would be a megabyte.</summary>
    private static object Told(AdviceOutcome outcome) => outcome switch
    {
        AdviceOutcome.Advised advised => new { advised.Plan, advised.ReadyHours, advised.Notices, advised.Effects },
        AdviceOutcome.CannotAdvise refused => refused,
        _ => throw new InvalidOperationException("another outcome"),
    };

    private static WeatherReview Review()
    {
        DateTimeOffset now = InventedDays.At(12);
        IEnumerable<SourcedReading> read = InventedDays.Wet.Between(-24 * 20, 9, hour => hour % 7 == 0 ? 2 : 0)
            .Where((_, i) => i % 11 > 1)
            .Select(reading => new SourcedReading(reading, WeatherSource.Observed, null, now));
        IEnumerable<SourcedReading> forecast = InventedDays.Ordinary.Between(-24 * 70, 40, hour => hour % 50 == 0 ? 6 : 0)
            .Select(reading => new SourcedReading(reading, WeatherSource.FeedForecast, "hill", now.AddHours(-1)));
        RainTotal[] totals = [new(InventedDays.At(-300), InventedDays.At(-250), 25)];
        ComposedWeather weather = WeatherComposition.Of([.. read, .. forecast], totals);
        return WeatherReview.Of(InventedDays.Site, weather, new(now, InventedDays.LastMidnight), new());
    }
}
