using WitherAdvisor.Advice;
using WitherAdvisor.Plans;
using Xunit;

namespace WitherAdvisor.Tests.Advice;

/// <summary>The search's coarse beds cannot tell how leaf dries that lies one shoot beside the other. A property found the case.</summary>
public sealed class HardlyAnyLeafTests
{
    [Fact]
    public void A_plan_that_misses_the_target_once_it_is_written_says_so()
    {
        AdviceRequest request = InventedBatch.Measured(12, 0.5, 0.70, 0.25, greenKgPerM2: 0.002);
        request = request with
        {
            Site = request.Site with
            {
                Style = request.Site.Style with { TargetMoistureWetBasis = 0.70, ShortestHoursSincePlucking = 5, CoolingHours = 3 },
            },
        };

        AdviceOutcome.Advised advice = InventedBatch.Advised(request);

        Assert.Equal(
            Math.Abs(advice.Curve[^1].MeanMoistureWetBasis - 0.70) > 0.03, advice.Broken.Any(notice => notice.Limit == LimitKind.TargetMoisture));
    }
}
