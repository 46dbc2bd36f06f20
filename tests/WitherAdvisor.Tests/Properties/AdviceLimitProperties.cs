using FsCheck.Xunit;
using WitherAdvisor.Advice;
using WitherAdvisor.Tests.Advice;
using Xunit;

namespace WitherAdvisor.Tests.Properties;

/// <summary>Hard limits hold in every advice a loft may get.</summary>
[Properties(Arbitrary = [typeof(AnyWither)], MaxTest = 1_500)]
public sealed class AdviceLimitProperties
{
    [Property]
    public void No_advice_passes_a_hard_limit(AdviceRequest request)
    {
        if (Advisor.Advise(request) is AdviceOutcome.Advised advice)
        {
            PlanLimits.AssertKept(request, advice);
        }
    }
}
