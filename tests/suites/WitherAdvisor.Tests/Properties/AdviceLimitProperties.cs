using FsCheck.Xunit;
using WitherAdvisor.Advice;
using WitherAdvisor.Tests.Advice;
using Xunit;

namespace WitherAdvisor.Tests.Properties;

/// <summary>Hard limits hold in every advice a loft may get. An advice costs some milliseconds, hence few; its search is held a thousand times by HardLimitsTests.</summary>
[Properties(Arbitrary = [typeof(AnyWither)], MaxTest = 600)]
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
