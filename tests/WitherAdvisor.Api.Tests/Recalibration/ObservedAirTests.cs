using WitherAdvisor.Bed;
using WitherAdvisor.Loft.Recalibrating.Observing;
using WitherAdvisor.Outcomes;

namespace WitherAdvisor.Api.Tests.Recalibration;

public sealed class ObservedAirTests
{
    private const double PressurePa = 84_560;

    [Fact]
    public void What_was_read_runs_evenly_between_readings_and_is_held_past_both_ends()
    {
        IReadOnlyList<InletAir> air = ObservedAir.Read([Row(1, 20, 5), Row(3, 24, 7)], 4.5, PressurePa);

        Assert.Equal([20.0, 20, 22, 24, 24, 24], air.Select(one => one.DryBulbC));
        Assert.Equal(Ratio(20, 5), air[0].HumidityRatio);
        Assert.Equal((Ratio(20, 5) + Ratio(24, 7)) / 2, air[2].HumidityRatio, 12);
    }

    [Fact]
    public void What_was_set_is_held_until_it_is_set_anew()
    {
        IReadOnlyList<InletAir> air = ObservedAir.Held([Row(3, 24, 7), Row(0, 20, 5)], 4, PressurePa);

        Assert.Equal([20.0, 20, 20, 24, 24], air.Select(one => one.DryBulbC));
    }

    [Fact]
    public void A_dry_bulb_alone_keeps_the_water_of_the_row_before_it()
    {
        IReadOnlyList<InletAir> air = ObservedAir.Held([Row(0, 20, 5), Row(2, 26, null)], 2, PressurePa);

        Assert.Equal(new InletAir(26, Ratio(20, 5)), air[2]);
    }

    [Fact]
    public void Rows_that_never_tell_humidity_or_heat_tell_nothing() =>
        Assert.Empty(ObservedAir.Held([Row(0, 20, null), Row(1, null, 5)], 6, PressurePa));

    [Theory]
    [InlineData(8, 0.75)]
    [InlineData(4, 1)]
    public void The_fan_counts_by_the_hours_that_it_was_held(double hours, double share) => Assert.Equal(
        share, ObservedAir.FanShare([new(0, null, null, null, 1), new(4, null, null, null, 0.5)], hours));

    [Fact]
    public void Of_a_fan_that_nobody_wrote_down_the_full_flow_is_taken() => Assert.Equal(1, ObservedAir.FanShare([Row(0, 20, 5)], 8));

    [Fact]
    public void Turns_are_as_written_else_spread_else_as_advised_else_usual()
    {
        Assert.Equal([1.0, 5], ObservedTurns.Of(new() { TurnedAtHours = [1, 5], Turns = 3 }, null, 9));
        Assert.Equal([3.0, 6], ObservedTurns.Of(new() { Turns = 2 }, null, 9));
        Assert.Empty(ObservedTurns.Of(new() { Turns = 0 }, null, 9));
        Assert.Equal([2.0, 4, 6, 8], ObservedTurns.Of(new(), null, 9));
    }

    private static AirHeld Row(double hour, double? dryBulbC, double? differenceK) => new(hour, dryBulbC, null, differenceK, null);

    private static double Ratio(double dryBulbC, double differenceK) => InletAir.FromDifference(dryBulbC, differenceK, PressurePa).HumidityRatio;
}
