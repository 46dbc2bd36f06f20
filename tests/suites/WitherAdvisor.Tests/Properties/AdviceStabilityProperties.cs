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
/// A small change of what comes in makes a small change of what comes out: air, hours and turns are found on one scale
/// without steps. An advice costs some milliseconds, hence few.
/// </summary>
public sealed class AdviceStabilityProperties
{
    private const double MostShareOfHours = 0.03;
    private const int MostTurns = 1;
    private const int StepsOfASweep = 100;

    /// <summary>Hours are written to five minutes.</summary>
    private const double WrittenHours = 1 / 12.0;

    private static readonly Func<AdviceRequest, AdviceRequest>[] Nudges =
    [
        request => WithAir(request, reading => reading with { DryBulbC = reading.DryBulbC + 0.1 }),
        request => WithAir(request, reading => reading with { RelativeHumidity = Math.Max(reading.RelativeHumidity!.Value - 0.002, 0.01) }),
        request => request with { Batch = request.Batch with { MeasuredMoistureWetBasis = request.Batch.MeasuredMoistureWetBasis + 0.001 } },
        request => request with { Batch = request.Batch with { GreenWeightKg = 1.005 * request.Batch.GreenWeightKg } },
    ];

    [Property(Arbitrary = [typeof(AnyWither)], MaxTest = 250)]
    public void A_nudge_moves_the_stop_by_three_in_a_hundred_and_the_turns_by_one_at_most(AdviceRequest request, int which)
    {
        AdviceRequest nudged = Nudges[(int)((uint)which % Nudges.Length)](request);
        if (Advisor.Advise(request) is AdviceOutcome.Advised before && Advisor.Advise(nudged) is AdviceOutcome.Advised after)
        {
            AssertNear(before.Plan, after.Plan);
        }
    }

    [Theory]
    [InlineData("humidity")]
    [InlineData("surface water")]
    [InlineData("moisture")]
    [InlineData("load")]
    public void Over_a_slow_sweep_the_advice_changes_little_at_a_time(string swept)
    {
        WitherPlan[] plans = [.. Enumerable.Range(0, StepsOfASweep + 1)
            .Select(step => InventedBatch.Advised(Swept(swept, (double)step / StepsOfASweep)).Plan)];

        Assert.All(plans.Zip(plans.Skip(1)), pair => AssertNear(pair.First, pair.Second));
    }

    private static void AssertNear(WitherPlan one, WitherPlan other)
    {
        Assert.Equal(one.StopHour, other.StopHour, WrittenHours + MostShareOfHours * one.StopHour);
        Assert.InRange(other.TurnHours.Count - one.TurnHours.Count, -MostTurns, MostTurns);
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
