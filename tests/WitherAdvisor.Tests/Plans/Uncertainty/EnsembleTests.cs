using WitherAdvisor.Advice;
using WitherAdvisor.Ambient;
using WitherAdvisor.Plans.Search;
using WitherAdvisor.Plans.Uncertainty;
using WitherAdvisor.Tests.Advice;
using Xunit;

namespace WitherAdvisor.Tests.Plans.Uncertainty;

public sealed class EnsembleTests
{
    [Fact]
    public void Where_some_cases_never_get_there_what_lies_among_them_is_unknown_and_not_endless()
    {
        AdviceRequest request = InventedBatch.Measured(16, 0.97, 0.80, 0.2);
        PlanBasis basis = PlanBasis.Of(request);
        CandidateTrial trial = new(basis.Problem(request, basis.Ahead.Ambient!));
        UncertainSpreads spreads = UncertainSpreads.Of(basis.Leaf, request.Coefficients.Spreads, forecast: true);
        int known = 0;

        // Ever less heat, until hardly a case is ready before the night ends.
        for (double differenceK = 4; differenceK > 0.4; differenceK -= 0.2)
        {
            Ensemble ensemble = Ensemble.Run(new(trial, trial.Try(differenceK, differenceK, 1), spreads), 12);
            int never = ensemble.All.Count(member => member.ReadyHour is null);
            if (never is > 10 and < 20)
            {
                Percentiles ready = ensemble.ReadyHours();
                Assert.Equal((true, true, false), (ready.P10.HasValue, ready.P50.HasValue, ready.P90.HasValue));
                known++;
            }
        }

        Assert.True(known > 0, "no case in between was met");
    }
}
