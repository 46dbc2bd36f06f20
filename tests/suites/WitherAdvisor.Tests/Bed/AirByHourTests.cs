using WitherAdvisor.Bed;
using Xunit;

namespace WitherAdvisor.Tests.Bed;

public sealed class AirByHourTests
{
    [Theory]
    [InlineData(-1, 20)]
    [InlineData(0.5, 21)]
    [InlineData(1.5, 20.5)]
    [InlineData(2, 19)]
    [InlineData(2.7, 19)] // past the last hour its air is held
    [InlineData(40, 19)]
    public void Air_runs_evenly_between_hours_and_is_held_past_the_last(double hour, double dryBulbC)
    {
        AirByHour air = new([new InletAir(20, 0.01), new InletAir(22, 0.01), new InletAir(19, 0.01)]);

        Assert.Equal(dryBulbC, air.At(hour).DryBulbC, 1e-12);
        Assert.Equal(19, new AirByHour([new InletAir(19, 0.01)]).At(3).DryBulbC);
    }
}
