using WitherAdvisor.Air;
using WitherAdvisor.Ambient;
using WitherAdvisor.Plans;
using WitherAdvisor.Plans.Search;
using Xunit;

namespace WitherAdvisor.Tests.Plans.Search;

public sealed class CandidateTrialTests
{
    [Theory]
    [InlineData(1)]
    [InlineData(0.75)]
    public void Heat_is_what_the_mix_takes_from_hour_to_hour_of_a_cooling_night(double fanShare)
    {
        PlanProblem problem = MadeProblem.In(MadeProblem.Of(26, hour => MadeProblem.Air(20 - 0.4 * hour, 0.85)));
        CandidateTrial trial = new(problem);

        HeldAir air = new(7.2, 7.2, fanShare);
        Candidate candidate = trial.Try(air);

        double heatKWh = Integral(candidate.HeatOffHour, hour =>
        {
            AirState ambient = problem.Ambient.At(hour);
            AirState plenum = ambient with { DryBulbC = trial.Main(air).At(hour).DryBulbC };
            return HotAirMix.HeatKW(ambient, plenum, problem.Trough.AirflowM3PerSM2 * fanShare);
        });
        Assert.Equal(heatKWh, candidate.HeatKWhPerM2, 0.004 * heatKWh);
        Assert.NotEqual(Math.Round(candidate.HeatOffHour), candidate.HeatOffHour, 0.05);
    }

    private static double Integral(double toHour, Func<double, double> of)
    {
        const int steps = 2_000;
        return Enumerable.Range(0, steps).Sum(step => of((step + 0.5) * toHour / steps)) * toHour / steps;
    }
}
