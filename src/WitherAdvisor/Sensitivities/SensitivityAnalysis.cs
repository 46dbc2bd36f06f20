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
        if (basis.Ahead.Ambient is not { } night || basis.LongestHours <= 0)
        {
            return null;
        }

        PlanSearch search = PlanSearch.Run(basis.Problem(request, night));
        if (search.Best is not { } chosen)
        {
            return null;
        }

        var spreads = UncertainSpreads.Of(basis.Leaf, request.Coefficients.Spreads, basis.Ahead.IsComplete);
        var wither = new UncertainWither(search.Trial, chosen, spreads);
        WrittenPlan written = PlanWriter.Write(search.Trial, chosen);
        double stopHour = written.Plan.StopHour;
        if (HardLimits.BrokenByWritten(search.Trial.Problem, written) is not null || wither.Dry(new(), stopHour).ReadyHour is not { } planned)
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
