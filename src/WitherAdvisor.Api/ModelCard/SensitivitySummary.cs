using WitherAdvisor.Api.Wording;
using WitherAdvisor.Plans.Uncertainty;
using WitherAdvisor.Sensitivities;

namespace WitherAdvisor.Api.ModelCard;

/// <summary>What matters most for a batch, in two sentences.</summary>
internal static class SensitivitySummary
{
    private const int MostNamed = 3;

    public static string Of(Sensitivity sensitivity)
    {
        string[] widest =
        [
            .. sensitivity.Widest(MostNamed).Select(bar => SensitivityWording.Name(bar.Code).ToLowerInvariant()),
        ];
        return $"Ready after {Figures.Hours(sensitivity.PlannedHours)} by the plan, in eight cases of ten {Band(sensitivity.ReadyHours)}. "
            + $"Of what is uncertain these matter most: {string.Join("; ", widest)}.";
    }

    private static string Band(Percentiles hours) =>
        $"{Before(hours.P10, "from")} {Before(hours.P90, "to")}";

    private static string Before(double? hours, string word) =>
        hours is { } known ? $"{word} {Figures.Hours(known)}" : $"{word} later than the air is looked at for";
}
