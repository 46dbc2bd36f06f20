using WitherAdvisor.Advice;
using WitherAdvisor.Leaf;
using WitherAdvisor.Plans;
using WitherAdvisor.Plans.Uncertainty;
using WitherAdvisor.ReferenceChecks.Cases;

namespace WitherAdvisor.ReferenceChecks.Runners;

/// <summary>What the service advises for a batch in steady air; inputs are those of <see cref="LoftInputs"/>.</summary>
public sealed class AdviceRunner : IRunner
{
    /// <summary>Standard deviations of a normal distribution between its tenth and ninetieth percentile.</summary>
    private const double DeviationsFromP10ToP90 = 2.5631;

    private const double FirstHours = 2;

    public string Name => "advice";

    public double Ours(ReferenceCase given)
    {
        AdviceRequest request = LoftInputs.Request(given.Inputs);
        if (given.Quantity == "standard_error_points")
        {
            request = Learned(request);
        }

        if (Advisor.Advise(request) is not AdviceOutcome.Advised advice)
        {
            return double.NaN;
        }

        WitherPlan plan = advice.Plan;
        return given.Quantity switch
        {
            "trough_hours" => plan.StopHour,
            "hours_since_plucking" => plan.StopHour + (request.Batch.LoadedAt - request.Batch.PluckedTo).TotalHours,
            "mean_hygrometric_difference_k" => plan.MeanHygrometricDifferenceK,
            "hottest_plenum_c" => plan.Settings.Max(setting => setting.Plenum.DryBulbC),
            "heat_kwh" => plan.HeatKWh,
            "hot_air_mixed_in" => Yes(plan.Settings.Where(setting => setting.Stage == StageKind.Main).All(setting => setting.HotAirShare > 0)),
            "heated_for_the_first_2_h" => Yes(plan.Settings.Where(setting => setting.Hour <= FirstHours).All(setting => setting.HotAirShare > 0)),
            "standard_error_points" => 100 * Band(advice.FinalMoistureWetBasis) / DeviationsFromP10ToP90,
            _ => throw new InvalidDataException($"unknown quantity {given.Quantity}"),
        };
    }

    /// <summary>As of a loft whose outcomes have told its g_0: the published model that errors are compared with was fitted to its own trough.</summary>
    private static AdviceRequest Learned(AdviceRequest request) =>
        request with { Coefficients = request.Coefficients with { SetName = "learned" } };

    private static double Yes(bool holds) => holds ? 1 : 0;

    private static double Band(Percentiles of) => of.P90!.Value - of.P10!.Value;
}
