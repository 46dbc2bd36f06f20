using WitherAdvisor.Advice;
using WitherAdvisor.Leaf;
using WitherAdvisor.Plans;
using WitherAdvisor.Simulations;
using WitherAdvisor.Sites;

namespace WitherAdvisor.SyntheticSeasons;

/// <summary>What a batch does when the loft follows the advice: the hygrometric differences held by the hour, the turns, heat off before rolling.</summary>
public static class TrueWither
{
    private const double HorizonHours = 36;

    /// <summary>Hours from loading to the target; null where it is not reached in 36 h.</summary>
    public static double? ReadyHour(SyntheticBatch batch, WitherPlan plan)
    {
        double cooling = plan.Stages[^1].Kind == StageKind.Cooling ? batch.Request.Site.Style.CoolingHours : 0;
        if (Run(batch, plan, HorizonHours, 0).HoursToTarget is not { } heated)
        {
            return null;
        }

        // With cooling the target comes later by a part of the cooling time: found by halving.
        double low = heated;
        double high = heated + cooling;
        for (int i = 0; i < 6 && cooling > 0; i++)
        {
            double ready = (low + high) / 2;
            bool done = Run(batch, plan, ready, Math.Min(cooling, ready)).FinalMoistureWetBasis <= batch.Request.Site.Style.TargetMoistureWetBasis;
            (low, high) = done ? (low, ready) : (ready, high);
        }

        return (low + high) / 2;
    }

    private static SimulationResult Run(SyntheticBatch batch, WitherPlan plan, double stop, double cooling)
    {
        (AdviceRequest request, HiddenTruth truth) = (batch.Request, batch.Truth);
        Trough trough = request.Trough with { AirflowM3PerSM2 = request.Trough.AirflowM3PerSM2 * truth.AirflowFactor };
        int interval = plan.TurnIntervalHours ?? (int)HorizonHours + 1;
        return WitherSimulation.Run(new(
            request.Site, trough, request.Batch.GreenWeightKg, batch.Leaf, request.Batch.LoadedAt, batch.Air,
            Stages(plan, truth.HeldDifferenceShiftK, stop, cooling),
            [.. Enumerable.Range(1, (int)HorizonHours).Select(turn => (double)turn * interval).TakeWhile(hour => hour < stop)],
            plan.FanShare, truth.Coefficients))!;
    }

    /// <summary>Each setting held until the next; the last one for as long as it takes.</summary>
    private static List<FixedStage> Stages(WitherPlan plan, double shiftK, double stop, double cooling)
    {
        AirSetting[] settings = [.. plan.Settings.Where(setting => setting.Stage != StageKind.Cooling && setting.Hour < stop - cooling)];
        var stages = settings.Select((setting, i) => new FixedStage(
            i + 1 < settings.Length ? settings[i + 1].Hour : stop - cooling,
            HygrometricDifferenceK: setting.HotAirShare > 0 ? setting.Plenum.HygrometricDifferenceK + shiftK : null)).ToList();
        if (cooling > 0)
        {
            stages.Add(new(stop));
        }

        return stages;
    }
}
