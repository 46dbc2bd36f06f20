using System.Text.Json;
using WitherAdvisor.Loft.Kept.Batches;
using WitherAdvisor.Outcomes;

namespace WitherAdvisor.Loft.Recalibrating.Gathering;

/// <summary>Air as it was advised, for withers of which nobody wrote down what was set.</summary>
public static class AdvisedAir
{
    /// <summary>By the hour from the answer; by its first setting where only its figures are kept. Empty where there was none.</summary>
    public static IReadOnlyList<AirHeld> Of(StoredAdvice? answer, AdviceFigures? figures)
    {
        if (answer is not null)
        {
            using var read = JsonDocument.Parse(answer.AnswerJson);
            if (read.RootElement.GetProperty("plan") is { ValueKind: JsonValueKind.Object } plan)
            {
                return [.. plan.GetProperty("settings").EnumerateArray().Select(Setting)];
            }
        }

        return figures is { AdvisedDryBulbC: { } dryBulbC, AdvisedHygrometricDifferenceK: { } differenceK }
            ? [new(0, dryBulbC, null, differenceK, null)]
            : [];
    }

    private static AirHeld Setting(JsonElement setting) => new(
        setting.GetProperty("hour").GetDouble(), setting.GetProperty("plenum_dry_bulb_c").GetDouble(), null,
        setting.GetProperty("hygrometric_difference_k").GetDouble(), null);
}
