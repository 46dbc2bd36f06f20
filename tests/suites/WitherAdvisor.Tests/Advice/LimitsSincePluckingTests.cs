using WitherAdvisor.Advice;
using WitherAdvisor.Coefficients;
using WitherAdvisor.Leaf;
using WitherAdvisor.Plans;
using WitherAdvisor.Readings;
using WitherAdvisor.Sites;
using Xunit;

namespace WitherAdvisor.Tests.Advice;

/// <summary>A site states the limits of its chemical wither in hours since plucking, so that is how they are told.</summary>
public sealed class LimitsSincePluckingTests
{
    private static readonly DateTimeOffset LoadedAt = new(2026, 6, 19, 17, 0, 0, TimeSpan.Zero);

    [Fact]
    public void Leaf_that_cannot_be_ready_in_time_is_told_the_sites_own_limit()
    {
        AdviceOutcome outcome = Advise(new WitherStyle { LongestHoursSincePlucking = 12 }, surfaceWaterKgPerKg: 0.3);

        var leastBad = Assert.IsType<AdviceOutcome.Advised>(outcome);
        LimitNotice notice = leastBad.Broken.Single(limit => limit.Limit == LimitKind.LongestTimeSincePlucking);
        Assert.Equal(12, notice.Allowed!.Value, 1e-9);
    }

    [Fact]
    public void A_plan_that_uses_all_the_time_there_is_is_told_its_hours_since_plucking()
    {
        AdviceOutcome outcome = Advise(new WitherStyle { ShortestHoursSincePlucking = 16.5 }, surfaceWaterKgPerKg: 0);

        var advised = Assert.IsType<AdviceOutcome.Advised>(outcome);
        LimitNotice notice = Assert.Single(advised.Notices, notice => notice.Limit == LimitKind.LongestTimeSincePlucking);
        Assert.Equal(24, notice.Allowed!.Value, 1e-9);
        Assert.Equal(advised.Plan.StopHour + 9, notice.Reached!.Value, 1e-9);
    }

    /// <summary>Plucked from nine hours to one and a half before loading, ambient air of 20 °C and 70 % all night.</summary>
    private static AdviceOutcome Advise(WitherStyle style, double surfaceWaterKgPerKg)
    {
        Batch batch = new(
            new LeafLabel("Invented", "1", null, null, null), LoadedAt.AddHours(-9), LoadedAt.AddHours(-1.5), LoadedAt, 1176,
            MeasuredSurfaceWaterKgPerKg: surfaceWaterKgPerKg, MeasuredMoistureWetBasis: 0.78);
        WeatherReading[] air = [.. Enumerable.Range(0, 48).Select(hour => new WeatherReading(LoadedAt.AddHours(hour), 20, RelativeHumidity: 0.7))];
        return Advisor.Advise(new AdviceRequest(
            new Site(1500, 7, 80, Site.UsualHotAirC, style), new Trough(42), batch, [], [], air, new WitherCoefficients()));
    }
}
