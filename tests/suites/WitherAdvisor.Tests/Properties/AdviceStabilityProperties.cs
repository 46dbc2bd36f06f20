using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using WitherAdvisor.Advice;
using WitherAdvisor.Leaf;
using WitherAdvisor.Plans;
using WitherAdvisor.Readings;
using WitherAdvisor.Tests.Advice;
using Xunit;

namespace WitherAdvisor.Tests.Properties;

/// <summary>
/// A small change of what comes in makes a small change of what comes out. The search looks at differences 0.4 K apart, so
/// that where two plans cost the same a nudge may move the advice by a step of it or two, which is up to a seventh of the
/// hours of a long wither. An advice costs some milliseconds, hence few.
/// </summary>
public sealed class AdviceStabilityProperties
{
    private const double MostStepsK = 1.3;
    private const double MostShareOfHours = 0.2;
    private const double AlwaysAllowedHours = 0.25;
    private const int StepsOfASweep = 100;

    /// <summary>Stops lie on five minutes and surface stages on quarter hours, so that a threshold may be met twice.</summary>
    private const int MostTurnsBack = 1;

    private static readonly Func<AdviceRequest, AdviceRequest>[] Nudges =
    [
        request => WithAir(request, reading => reading with { DryBulbC = reading.DryBulbC + 0.1 }),
        request => WithAir(request, reading => reading with { RelativeHumidity = Math.Max(reading.RelativeHumidity!.Value - 0.002, 0.01) }),
        request => request with { Batch = request.Batch with { MeasuredMoistureWetBasis = request.Batch.MeasuredMoistureWetBasis + 0.001 } },
        request => request with { Batch = request.Batch with { GreenWeightKg = 1.005 * request.Batch.GreenWeightKg } },
    ];

    [Property(Arbitrary = [typeof(AnyWither)], MaxTest = 250)]
    public void A_nudge_moves_the_plan_by_a_step_of_the_search_or_two_at_most(AdviceRequest request, int which)
    {
        AdviceRequest nudged = Nudges[(int)((uint)which % Nudges.Length)](request);
        if (Advisor.Advise(request) is AdviceOutcome.Advised before && Advisor.Advise(nudged) is AdviceOutcome.Advised after)
        {
            double stop = before.Plan.StopHour;
            Assert.Equal(before.Plan.MeanHygrometricDifferenceK, after.Plan.MeanHygrometricDifferenceK, MostStepsK);
            Assert.Equal(stop, after.Plan.StopHour, AlwaysAllowedHours + MostShareOfHours * stop);
        }
    }

    [Theory]
    [InlineData("humidity")]
    [InlineData("surface water")]
    [InlineData("moisture")]
    [InlineData("load")]
    public void Over_a_slow_sweep_the_advice_changes_little_at_a_time_and_does_not_flap(string swept)
    {
        WitherPlan[] plans = [.. Enumerable.Range(0, StepsOfASweep + 1)
            .Select(step => InventedBatch.Advised(Swept(swept, (double)step / StepsOfASweep)).Plan)];
        int[] turns = [.. plans.Select(plan => plan.TurnIntervalHours ?? 0)];
        int changes = turns.Zip(turns.Skip(1)).Count(pair => pair.First != pair.Second);
        double largestMove = plans.Zip(plans.Skip(1)).Max(pair => Math.Abs(pair.First.StopHour - pair.Second.StopHour));

        Assert.True(largestMove <= AlwaysAllowedHours, $"{largestMove} h between two neighbours; turns {string.Join(' ', turns)}");
        Assert.True(changes < turns.Distinct().Count() + MostTurnsBack, $"turns {string.Join(' ', turns)}");
    }

    private static AdviceRequest Swept(string what, double share) => what switch
    {
        "humidity" => InventedBatch.Measured(19, 0.70 + 0.25 * share, 0.78, 0.1),
        "surface water" => InventedBatch.Measured(17, 0.95, 0.78, 0.3 * share),
        "moisture" => InventedBatch.Measured(19, 0.85, 0.76 + 0.06 * share, 0.05),
        "load" => InventedBatch.Measured(19, 0.85, 0.78, 0.1, 20 + 15 * share),
        _ => throw new ArgumentOutOfRangeException(nameof(what), what, "nothing of that name is swept"),
    };

    private static AdviceRequest WithAir(AdviceRequest request, Func<WeatherReading, WeatherReading> change) =>
        request with { Readings = [.. request.Readings.Select(change)], Forecast = [.. request.Forecast.Select(change)] };
}
