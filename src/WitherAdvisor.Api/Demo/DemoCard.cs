using System.Text.Json;
using WitherAdvisor.Api.Advice.Responses;
using WitherAdvisor.Fields.Json;
using WitherAdvisor.Loft.Intake;

namespace WitherAdvisor.Api.Demo;

/// <summary>An advice in a few lines for a terminal.</summary>
internal static class DemoCard
{
    public static string Of(IntakeResult.Taken taken, string address)
    {
        AdviceResponse answer = JsonSerializer.Deserialize<AdviceResponse>(taken.Advice.AnswerJson, JsonRules.Response)!;
        var label = taken.Batch.Batch.Label;
        string title = $"{label.Division}, {label.Field} on {taken.Batch.TroughId}, {taken.Batch.Batch.GreenWeightKg:F0} kg green leaf (invented)";
        return $"{Environment.NewLine}{title}{Environment.NewLine}{Plan(answer)}  {address}/batches/{taken.Batch.Id}";
    }

    private static string Plan(AdviceResponse answer)
    {
        if (answer.Plan is not { } plan)
        {
            return $"  No plan is within the limits.{Environment.NewLine}";
        }

        SettingResponse set = plan.SetNow;
        string[] lines =
        [
            $"  Set     plenum dry bulb {set.PlenumDryBulbC:F1} °C, wet bulb {set.PlenumWetBulbC:F1} °C, difference {set.HygrometricDifferenceK:F1} K, hot air {set.HotAirSharePercent:F0} % of the mix",
            $"  For     {plan.Ready.StopHours:F1} h: ready {plan.Ready.StopAt:HH:mm}, between {plan.Ready.P10At:HH:mm} and {plan.Ready.P90At:HH:mm} in eight cases of ten",
            $"  Turn    {Turns(plan.Turning)}",
        ];
        return string.Concat(lines.Select(line => line + Environment.NewLine));
    }

    private static string Turns(TurningResponse turning)
    {
        string times = string.Join(", ", turning.At.Select(at => at.ToString("HH:mm")));
        return turning.At.Count == 0 ? "not needed"
            : turning.EveryHours is { } hours ? $"every {hours} h: {times}"
            : $"{turning.At.Count} times: {times}";
    }
}
