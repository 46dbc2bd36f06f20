using WitherAdvisor.Plans.Search;

namespace WitherAdvisor.Plans.Writing;

/// <summary>Which limits shaped a plan, and which wishes it could not meet.</summary>
internal static class Notices
{
    private const double OnTimeHours = 0.25;
    private const double OnTargetWetBasis = 0.005;
    private const double Touching = 0.05;

    public static IReadOnlyList<LimitNotice> Of(PlanProblem problem, Candidate chosen, WrittenPlan plan)
    {
        HeldAir air = chosen.Air;
        var style = problem.Style;
        WitherPlan written = plan.Plan;
        var notices = new List<LimitNotice>();
        void Say(bool holds, LimitKind limit, double allowed, double reached)
        {
            if (holds)
            {
                notices.Add(new(limit, allowed, reached));
            }
        }

        double wanted = style.WantedHygrometricDifferenceK;
        double hottest = written.Settings.Select(setting => setting.Plenum.DryBulbC).DefaultIfEmpty(double.NegativeInfinity).Max();
        double ceilingC = HardLimits.SetPointCeilingC(style);
        Say(hottest > ceilingC - Touching, LimitKind.PlenumDryBulb, ceilingC, hottest);
        Say(air.DifferenceK > style.HygrometricDifferenceCeilingK - Touching && wanted < air.DifferenceK - Touching,
            LimitKind.HygrometricDifference, style.HygrometricDifferenceCeilingK, air.DifferenceK);
        Say(
            written.Stages.Any(stage => stage.WantedHygrometricDifferenceK is not null) && Math.Abs(air.DifferenceK - wanted) > Touching,
            LimitKind.WantedHygrometricDifference, wanted, air.DifferenceK);
        Say(problem.ShortestHours > problem.Start.Hour && written.StopHour < problem.ShortestHours + 2 * Touching,
            LimitKind.ShortestTimeSincePlucking, problem.ShortestHours, written.StopHour);
        Say(written.StopHour > problem.LongestHours - 2 * Touching, LimitKind.LongestTimeSincePlucking, problem.LongestHours, written.StopHour);
        Say(Math.Abs(plan.FinalMoistureWetBasis - style.TargetMoistureWetBasis) > OnTargetWetBasis,
            LimitKind.TargetMoisture, style.TargetMoistureWetBasis, plan.FinalMoistureWetBasis);
        Say(written.LargestSpreadWetBasis > style.ToleratedSpreadWetBasis * (1 + Touching),
            LimitKind.Spread, style.ToleratedSpreadWetBasis, written.LargestSpreadWetBasis);
        double shortKW = HeatShort.MostKW(problem, written);
        Say(shortKW > 0, LimitKind.HeaterCapacity, written.Settings.Select(setting => setting.HeatKW).DefaultIfEmpty(0).Max(), shortKW);
        if (problem.ReadyByHour is { } readyBy)
        {
            Say(Math.Abs(written.StopHour - readyBy) > OnTimeHours, LimitKind.ReadyBy, readyBy, written.StopHour);
        }

        return notices;
    }
}
