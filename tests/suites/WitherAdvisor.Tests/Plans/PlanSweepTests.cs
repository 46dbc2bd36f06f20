using WitherAdvisor.Advice;
using WitherAdvisor.PlanSweep;
using Xunit;

namespace WitherAdvisor.Tests.Plans;

/// <summary>A fixed part of the made-up situations of `PLANS.md`, held to what a maker would sign; all of them take a minute by the command.</summary>
public sealed class PlanSweepTests
{
    /// <summary>Coprime to the variants of a situation, so that each is met.</summary>
    private const int EachSoMany = 13;

    [Fact]
    public void A_maker_would_sign_every_plan() =>
        Assert.All(Situations.All.Where((_, at) => at % EachSoMany == 0), situation => Assert.Empty(SweepTable.Faults(situation, situation.Advise())));

    [Theory]
    [InlineData("coast, humid")]
    [InlineData("mid country")]
    [InlineData("hills, ordinary")]
    [InlineData("hills, dry wind")]
    public void A_later_wish_never_takes_more_heat(string climate)
    {
        Situation plain = new(Climate.All.Single(one => one.Name == climate), 28, 0.775, 0.05, 17, 3, 0.5, null, null);
        double before = double.PositiveInfinity;
        for (double wish = 6; wish <= 20; wish += 2)
        {
            AdviceOutcome.Advised advice = (plain with { ReadyByHours = wish }).Advise();

            Assert.True(advice.Plan.HeatKWh <= before * 1.01 + 1, $"{advice.Plan.HeatKWh} kWh for {wish} h, {before} before");
            Assert.True(advice.Plan.StopHour >= wish - 0.5, $"{advice.Plan.StopHour} h, wanted {wish} h");
            before = advice.Plan.HeatKWh;
        }
    }
}
