using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using WitherAdvisor.Advice;
using WitherAdvisor.Leaf;
using WitherAdvisor.Plans;
using WitherAdvisor.Readings;
using Xunit;

namespace WitherAdvisor.Tests.Advice;

/// <summary>What must hold of any advice.</summary>
[Properties(Arbitrary = [typeof(AnyWither)])]
public sealed class AdviceProperties
{
    /// <summary>A tenth of a point of moisture.</summary>
    private const double TenthOfAPoint = 0.001;

    /// <summary>
    /// The median stands this near the plan, as a share of the band from P10 to P90: the cases do not lie evenly about
    /// it, for no leaf carries less than no water.
    /// </summary>
    private const double MedianShareOfBand = 0.15;

    [Fact]
    public void Most_of_the_batches_drawn_here_get_a_plan() =>
        Assert.InRange(AnyWither.Batch().Generator.Sample(200).Count(request => Advisor.Advise(request) is AdviceOutcome.Advised), 140, 200);

    [Property]
    public void The_same_request_gives_the_same_answer_to_the_last_digit(AdviceRequest request) =>
        Assert.Equal(JsonText.Of(Advisor.Advise(request)), JsonText.Of(Advisor.Advise(request)));

    [Property]
    public void The_order_in_which_readings_come_does_not_matter(AdviceRequest request, int seed)
    {
        Random random = new(seed);
        AdviceRequest shuffled = request with { Readings = Shuffled(request.Readings, random), Forecast = Shuffled(request.Forecast, random) };

        Assert.Equal(JsonText.Of(Advisor.Advise(request)), JsonText.Of(Advisor.Advise(shuffled)));
    }

    [Property]
    public void What_comes_out_is_a_number(AdviceRequest request) => Assert.NotEmpty(JsonText.Of(Advisor.Advise(request)));

    [Property]
    public void A_refusal_names_what_binds(AdviceRequest request)
    {
        if (Advisor.Advise(request) is AdviceOutcome.CannotAdvise refused)
        {
            Assert.NotEmpty(refused.Binding);
        }
    }

    [Property]
    public void Percentiles_stand_in_order_about_the_plan(AdviceRequest request)
    {
        if (Advisor.Advise(request) is not AdviceOutcome.Advised advice)
        {
            return;
        }

        Assert.True(advice.ReadyHours.P10 <= (advice.ReadyHours.P50 ?? double.MaxValue));
        Assert.True((advice.ReadyHours.P50 ?? 0) <= (advice.ReadyHours.P90 ?? double.MaxValue));
        Assert.True(advice.FinalMoistureWetBasis.P10 <= advice.FinalMoistureWetBasis.P50);
        Assert.True(advice.FinalMoistureWetBasis.P50 <= advice.FinalMoistureWetBasis.P90);
        double band = advice.FinalMoistureWetBasis.P90!.Value - advice.FinalMoistureWetBasis.P10!.Value;
        Assert.Equal(advice.Curve[^1].MeanMoistureWetBasis, advice.FinalMoistureWetBasis.P50!.Value, MedianShareOfBand * band);
        bool stopsAtTarget = Math.Abs(advice.Curve[^1].MeanMoistureWetBasis - request.Site.Style.TargetMoistureWetBasis) < TenthOfAPoint;
        if (stopsAtTarget)
        {
            Assert.InRange(advice.Plan.StopHour, advice.ReadyHours.P10!.Value, advice.ReadyHours.P90 ?? double.MaxValue);
        }
    }

    [Fact]
    public void Leaf_held_back_by_its_chemical_wither_is_said_to_be_ready_before_the_stop_and_drier_than_wanted()
    {
        AdviceOutcome.Advised advice = InventedBatch.Advised(InventedBatch.Measured(22, 0.5, 0.75, 0, greenKgPerM2: 16));

        Assert.Contains(advice.Notices, notice => notice.Limit == LimitKind.ShortestTimeSincePlucking);
        Assert.True(advice.ReadyHours.P50 < advice.Plan.StopHour - 0.25);
        Assert.True(advice.FinalMoistureWetBasis.P50 < 0.59);
        Assert.Equal(advice.Curve[^1].MeanMoistureWetBasis, advice.FinalMoistureWetBasis.P50!.Value, 0.005);
    }

    [Property]
    public void Wanting_it_earlier_never_makes_the_plan_later(AdviceRequest request)
    {
        if (request.Batch.ReadyBy is not { } readyBy)
        {
            return;
        }

        AdviceRequest sooner = request with { Batch = request.Batch with { ReadyBy = readyBy.AddHours(-1.5) } };
        if (Advisor.Advise(request) is AdviceOutcome.Advised advice && Advisor.Advise(sooner) is AdviceOutcome.Advised earlier)
        {
            // Stops are written to five minutes.
            Assert.True(earlier.Plan.StopHour <= advice.Plan.StopHour + 0.1, $"{earlier.Plan.StopHour} against {advice.Plan.StopHour} h");
        }
    }

    [Property]
    public void Air_that_is_not_forecast_makes_the_answer_no_surer_and_without_heat_less_sure(AdviceRequest request)
    {
        AdviceRequest steady = request with
        {
            Forecast = [.. Enumerable.Range(1, 36).Select(hour => request.Readings[^1] with { Time = request.Batch.LoadedAt.AddHours(hour) })],
        };
        if (Advisor.Advise(steady) is AdviceOutcome.Advised forecast && forecast.ReadyHours.P90 is { } latest)
        {
            // Without the forecast the same air is taken, for it was the same the day before.
            AdviceOutcome.Advised unsure = InventedBatch.Advised(steady with { Forecast = [] });
            Assert.Equal(forecast.Plan.StopHour, unsure.Plan.StopHour, 0.1);
            double? wider = unsure.ReadyHours.P90 - unsure.ReadyHours.P10 - (latest - forecast.ReadyHours.P10);
            Assert.False(wider < -1e-9);
            bool heated = forecast.Plan.Settings.Any(setting => setting.HotAirShare > 0);
            Assert.True(heated || wider is null or > 0);
            Assert.Contains(unsure.Assumptions, assumption => assumption.Code == "air_not_forecast");
        }
    }

    [Property]
    public void Checks_expect_what_the_curve_shows(AdviceRequest request)
    {
        if (Advisor.Advise(request) is not AdviceOutcome.Advised advice)
        {
            return;
        }

        Assert.All(advice.Checks, check =>
        {
            Assert.InRange(check.Hour, 1, advice.Plan.StopHour);
            Assert.InRange(check.ExpectedWeightKg, check.LowWeightKg, check.HighWeightKg);
            Assert.Equal(10 * check.ExpectedWeightKg / request.Batch.GreenWeightKg, check.ExpectedWeightOfSampleKg, 1e-9);
            Assert.Contains(advice.Curve, point => Math.Abs(point.Hour - check.Hour) < 0.01 && Math.Abs(point.LeafWeightKg - check.ExpectedWeightKg) < 1e-6);
        });
    }

    private static List<WeatherReading> Shuffled(IReadOnlyList<WeatherReading> readings, Random random)
    {
        WeatherReading[] shuffled = [.. readings];
        random.Shuffle(shuffled);
        return [.. shuffled];
    }
}
