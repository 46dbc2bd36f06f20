using WitherAdvisor.Bed;
using WitherAdvisor.Plans;
using WitherAdvisor.Plans.Search;
using WitherAdvisor.Tests.Plans.Search;
using Xunit;

namespace WitherAdvisor.Tests.Plans;

public sealed class DryingTraceTests
{
    [Fact]
    public void Leaf_that_is_ready_as_it_comes_is_ready_at_once()
    {
        PlanProblem problem = MadeProblem.In(MadeProblem.Ordinary);
        LeafBed bed = new(problem.Bed(new CandidateTrial(problem).Saturation, BedResolution.Search));
        double water = bed.MeanTissueDryBasis + bed.MeanSurfaceDryBasis;

        Assert.Equal(0, new DryingTrace(bed, water + 0.1, problem.Start.Bed).TargetHour);
        Assert.Null(new DryingTrace(bed, water - 0.1, problem.Start.Bed).TargetHour);
        Assert.Equal(water, new DryingTrace(bed, 1, problem.Start.Bed).WaterDryBasis(3), 1e-12);
    }
}
