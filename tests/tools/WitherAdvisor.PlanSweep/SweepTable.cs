using System.Globalization;
using WitherAdvisor.Advice;
using WitherAdvisor.Plans;

namespace WitherAdvisor.PlanSweep;

/// <summary>Plans of many situations as a table to read.</summary>
public static class SweepTable
{
    /// <summary>Writes it; false where a maker would not sign a plan.</summary>
    public static bool Print(TextWriter to, IReadOnlyList<Situation> situations)
    {
        var faults = new List<string>();
        var rows = new List<string>();
        int leastBad = 0;
        foreach (Situation situation in situations)
        {
            AdviceOutcome.Advised advice = situation.Advise();
            leastBad += advice.IsLeastBad ? 1 : 0;
            rows.Add(Row(situation, advice));
            faults.AddRange(Faults(situation, advice).Select(fault => $"{Name(situation)}: {fault}"));
        }

        to.WriteLine("# Plans for made-up situations");
        to.WriteLine();
        to.WriteLine("Written by `dotnet run -c Release --project tests/tools/WitherAdvisor.PlanSweep`. All of it is invented; HD: hygrometric difference held in the main stage.");
        to.WriteLine();
        to.WriteLine($"{situations.Count} situations, each also with a hundredth more leaf, 0.1 K warmer and 0.1 point wetter. {leastBad} have only a least bad plan. Plans that a maker would not sign: {faults.Count}.");
        to.WriteLine();
        foreach (string fault in faults)
        {
            to.WriteLine($"- {fault}");
        }

        to.WriteLine();
        to.WriteLine("| climate | kg/m² | leaf %, water kg/kg | loaded | old h | least fan | heater kW | wish h | pace | HD K | fan | ready h | stop h | moisture % | turns at h | spread | heat kWh | warmest leaf °C | least bad by |");
        to.WriteLine("|---|---|---|---|---|---|---|---|---|---|---|---|---|---|---|---|---|---|---|");
        rows.ForEach(to.WriteLine);
        return faults.Count == 0;
    }

    /// <summary>What a maker would not sign of one plan.</summary>
    public static IEnumerable<string> Faults(Situation situation, AdviceOutcome.Advised advice) =>
        MakersRules.Broken(situation, advice).Concat(
            Situations.Nudged(situation).SelectMany(nudged => MakersRules.Jumps(advice.Plan, nudged.Advise().Plan)));

    private static string Name(Situation s) => string.Create(
        CultureInfo.InvariantCulture,
        $"{s.Climate.Name}, {s.LoadKgPerM2} kg/m², {100 * s.Moisture:0.0} %, {s.SurfaceWater} kg/kg, loaded {s.LoadedHour} h, {s.HoursSincePlucking} h old, fan {s.SlowestFan}, heater {s.HeaterKW}, wish {s.ReadyByHours}, {s.Pace}");

    private static string Row(Situation s, AdviceOutcome.Advised advice)
    {
        WitherPlan plan = advice.Plan;
        double? held = plan.Stages.FirstOrDefault(stage => stage.Kind == StageKind.Main)?.WantedHygrometricDifferenceK;
        double warmest = advice.Curve.Max(point => Math.Max(point.BottomLeafC!.Value, point.TopLeafC!.Value));
        return string.Create(
            CultureInfo.InvariantCulture,
            $"| {s.Climate.Name} | {s.LoadKgPerM2:0} | {100 * s.Moisture:0.0}, {s.SurfaceWater:0.00} | {s.LoadedHour:0}:00 | {s.HoursSincePlucking:0} | {s.SlowestFan:0.0} | {s.HeaterKW:0} | {s.ReadyByHours:0} | {s.Pace} | {held:0.0} | {plan.FanShare * plan.RunShare:0.00} | {plan.ReadyHour:0.0} | {plan.StopHour:0.0} | {100 * advice.Curve[^1].MeanMoistureWetBasis:0.0} | {string.Join(' ', plan.TurnHours)} | {100 * plan.LargestSpreadWetBasis:0.0} | {plan.HeatKWh:0} | {warmest:0.0} | {string.Join(' ', advice.Broken.Select(limit => limit.Limit))} |");
    }
}
