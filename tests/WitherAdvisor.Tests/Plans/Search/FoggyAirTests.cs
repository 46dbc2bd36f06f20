using WitherAdvisor.Air;
using WitherAdvisor.Ambient;
using WitherAdvisor.Coefficients;
using WitherAdvisor.Leaf;
using WitherAdvisor.Plans.Search;
using WitherAdvisor.Sites;
using Xunit;

namespace WitherAdvisor.Tests.Plans.Search;

/// <summary>Air drawn straight between two hours very far apart holds more vapour than it can. A property found the case.</summary>
public sealed class FoggyAirTests
{
    private const double PressurePa = 99_022;

    private static readonly AmbientForecast Plunging = new(
    [
        new AirState(0.092, 0.0028288, PressurePa),
        .. Enumerable.Repeat(new AirState(-32.763, 0.00013172, PressurePa), 25),
    ]);

    [Theory]
    [InlineData(0.766)]
    [InlineData(0.768)]
    [InlineData(0.770)]
    public void Leaf_that_is_ready_in_it_gets_hours_all_the_same(double target)
    {
        PlanProblem problem = new(
            new LeafState(0.6436, 0.6), 5.94, new Trough(275, 0.534), new WitherStyle { TargetMoistureWetBasis = target }, Site.UsualHotAirC,
            Plunging, new WitherCoefficients { CuticularConductanceMPerS = 2e-3 }, 0, 19, null);

        Candidate candidate = new CandidateTrial(problem).Try(0.667, 2.167, 1);

        Assert.InRange(candidate.HeatedHoursToTarget!.Value, 0.3, 0.9);
        Assert.True(double.IsFinite(candidate.StopHour) && double.IsFinite(candidate.CoolingDelayHours), $"{candidate}");
    }
}
