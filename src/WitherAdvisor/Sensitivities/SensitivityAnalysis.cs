using WitherAdvisor.Advice;
using WitherAdvisor.Ambient;
using WitherAdvisor.Plans;
using WitherAdvisor.Plans.Search;
using WitherAdvisor.Plans.Uncertainty;
using WitherAdvisor.Plans.Writing;

namespace WitherAdvisor.Sensitivities;

/// <summary>Which inputs matter most, from the model itself.</summary>
public static class SensitivityAnalysis
{
    /// <summary>For the plan that would be advised; null where none is, or where it nears its target without reaching it.</summary>
    public static Sensitivity? Of(AdviceRequest request)
    {
        PlanBasis basis = PlanBasis.Of(request);
        if (basis.Ahead.Ambient is not { } night)
        {
            return null;
        }

        PlanSearch search = PlanSearch.Run(basis.Problem(request, night));
        WrittenPlan written = PlanWriter.Write(search.Trial, search.Best);
        Candidate chosen = written.AsWritten;
        var spreads = UncertainSpreads.Of(basis.Leaf, request.Coefficients.SpreadsInAdvice(), basis.Ahead.IsComplete);
        var wither = new UncertainWither(search.Trial, chosen, spreads);
        double stopHour = written.Plan.StopHour;
        if (BrokenLimits.Of(search.Trial.Problem, written).Count > 0 || wither.Dry(new(), stopHour).ReadyHour is not { } planned)
        {
            return null;
        }

        IEnumerable<InputSensitivity> bars =
        [
            .. new UncertainInputs(search.Trial.Problem, chosen, wither, spreads, planned).All(),
            .. new InputErrors(request, search.Trial.Problem, chosen, spreads, planned).All(),
        ];
        return new(
            planned,
            Ensemble.Run(wither, stopHour).ReadyHours(),
            [.. bars.OrderByDescending(bar => bar.WidthHours ?? double.PositiveInfinity).ThenBy(bar => bar.Code, StringComparer.Ordinal)]);
    }
}
