using WitherAdvisor.Advice;
using WitherAdvisor.Plans;
using WitherAdvisor.Sites;

namespace WitherAdvisor.PlanSweep;

/// <summary>What a maker would not sign, read off a plan as a person would read it.</summary>
public static class MakersRules
{
    private const double OnTimeHours = 0.5;
    private const double LeafCeilingC = 35;
    private const double Rounding = 1e-6;

    /// <summary>What is wrong with a plan; none where a maker would sign it.</summary>
    public static IEnumerable<string> Broken(Situation situation, AdviceOutcome.Advised advice)
    {
        WitherStyle style = situation.Request().Site.Style;
        WitherPlan plan = advice.Plan;
        double setPointC = Math.Min(style.PlenumCeilingC, WitherStyle.HighestPlenumC) - style.PlenumMarginK;
        if (plan.Settings.Any(setting => setting.Plenum.DryBulbC > Math.Max(setPointC, setting.Ambient.DryBulbC) + Rounding))
        {
            yield return "set-point over its margin";
        }

        if (plan.Settings.Any(setting => setting.HeatKW > (situation.HeaterKW ?? double.PositiveInfinity) + Rounding))
        {
            yield return "more heat than there is";
        }

        if (situation.ReadyByHours is { } wish && plan.StopHour < wish - OnTimeHours)
        {
            yield return "rolled before it is wanted";
        }

        if (situation.ReadyByHours is { } wanted && plan.ReadyHour < wanted - OnTimeHours && plan.HeatKWh > Rounding)
        {
            yield return "heat spent to be early";
        }

        if (plan.TurnHours.Count > style.MostTurns
            || plan.TurnHours.Any(turn => turn > plan.StopHour - style.TurnFreeLastHours + Rounding)
            || plan.Stages.Any(stage => stage.Kind is StageKind.Cooling or StageKind.Holding && plan.TurnHours.Any(turn => turn > stage.FromHour + Rounding)))
        {
            yield return "turns that hands cannot do";
        }

        foreach (LimitNotice limit in advice.Broken.Where(limit => !CannotBeKept(situation, advice, limit)))
        {
            yield return $"{limit.Limit} broken without need";
        }
    }

    /// <summary>That a nudge moves the stop by over three in a hundred, or the turns by more than one.</summary>
    public static IEnumerable<string> Jumps(WitherPlan plan, WitherPlan nudged)
    {
        const double WrittenHours = 1 / 12.0;
        if (Math.Abs(nudged.StopHour - plan.StopHour) > 0.03 * plan.StopHour + WrittenHours)
        {
            yield return $"stop {plan.StopHour:0.00} h, nudged {nudged.StopHour:0.00} h";
        }

        if (Math.Abs(nudged.TurnHours.Count - plan.TurnHours.Count) > 1)
        {
            yield return $"{plan.TurnHours.Count} turns, nudged {nudged.TurnHours.Count}";
        }
    }

    /// <summary>Whether a limit could not be kept: hot air outside, or leaf that even the harshest air brings to its target too late.</summary>
    private static bool CannotBeKept(Situation situation, AdviceOutcome.Advised advice, LimitNotice limit)
    {
        AdviceRequest request = situation.Request();
        WitherStyle style = request.Site.Style;
        AdviceRequest harshest = request with
        {
            Site = request.Site with { Style = style with { WantedHygrometricDifferenceK = style.HygrometricDifferenceCeilingK } },
            Batch = request.Batch with { ReadyBy = null },
        };
        return limit.Limit == LimitKind.LeafTemperature
            ? advice.Plan.Settings.Max(setting => setting.Ambient.DryBulbC) > LeafCeilingC
            : ((AdviceOutcome.Advised)Advisor.Advise(harshest)).Broken.Any(other => other.Limit == limit.Limit);
    }
}
