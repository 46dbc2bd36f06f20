using FsCheck.Xunit;
using WitherAdvisor.Advice;
using WitherAdvisor.Tests.Advice;
using Xunit;

namespace WitherAdvisor.Tests.Properties;

/// <summary>Finite in, finite out, over all that the service takes. An advice costs ten milliseconds or more here, hence few at a time.</summary>
[Properties(Arbitrary = [typeof(AnyDeclared)], MaxTest = 500)]
public sealed class DeclaredDomainProperties
{
    [Property]
    public void An_answer_holds_finite_numbers_only_and_a_plan_keeps_every_hard_limit(AdviceRequest request)
    {
        AdviceOutcome outcome = Advisor.Advise(request);

        // The writer throws on anything that is not a finite number.
        Assert.NotEmpty(JsonText.Of(outcome));
        if (outcome is AdviceOutcome.Advised advice)
        {
            PlanLimits.AssertKept(request, advice);
        }
        else
        {
            Assert.NotEmpty(((AdviceOutcome.CannotAdvise)outcome).Binding);
        }
    }
}
