using WitherAdvisor.Plans;
using WitherAdvisor.Plans.Search;
using WitherAdvisor.Sites;
using Xunit;

namespace WitherAdvisor.Tests.Plans.Search;

/// <summary>Ambient air that is itself over the ceiling of 10 K (12 K on wet leaf): when it counts.</summary>
public sealed class BrokenLimitsTests
{
    private const double Fits = 6;
    private const double ForWetLeafOnly = 11;

    private static readonly WitherStyle Style = WitherStyle.Short;

    [Theory]
    [InlineData(7, true)]
    [InlineData(8, true)] // the hour that the stop falls into
    [InlineData(9, false)] // leaf that is off the trough minds no air
    [InlineData(20, false)]
    public void Air_counts_up_to_the_stop(int dryHour, bool breaks)
    {
        PlanProblem problem = MadeProblem.In(MadeProblem.Of(24, hour => MadeProblem.Differing(hour == dryHour ? 13 : Fits)));

        LimitNotice? broken = HardLimits.BrokenByAmbientAir(problem, stopHour: 7.5, surfaceEndHour: 2);

        Assert.Equal(breaks ? LimitKind.HygrometricDifference : null, broken?.Limit);
    }

    [Theory]
    [InlineData(2, true)] // dry from the second hour on, in air for wet leaf
    [InlineData(4, false)]
    [InlineData(3.5, true)] // between the hours the air is still over the lower ceiling
    public void The_lower_ceiling_begins_where_the_surface_is_dry(double surfaceEndHour, bool breaks)
    {
        PlanProblem problem = MadeProblem.In(MadeProblem.Of(24, hour => MadeProblem.Differing(hour <= 3 ? ForWetLeafOnly : 9.5)));

        LimitNotice? broken = HardLimits.BrokenByAmbientAir(problem, stopHour: 12, surfaceEndHour);

        Assert.Equal(breaks, broken is not null);
        Assert.All(new[] { broken }.OfType<LimitNotice>(), notice => Assert.Equal(Style.HygrometricDifferenceCeilingK, notice.Allowed));
    }

    [Theory]
    [InlineData(7.5)]
    [InlineData(9)]
    public void Leaf_that_stays_wet_to_its_stop_knows_the_higher_ceiling_alone(double surfaceEndHour)
    {
        PlanProblem problem = MadeProblem.In(MadeProblem.Of(24, hour => MadeProblem.Differing(hour is 7 or 9 ? ForWetLeafOnly : 9.9)));

        Assert.Null(HardLimits.BrokenByAmbientAir(problem, stopHour: 7.5, surfaceEndHour));
    }
}
