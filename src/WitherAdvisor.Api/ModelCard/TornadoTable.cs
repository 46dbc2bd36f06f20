using WitherAdvisor.Api.Wording;
using WitherAdvisor.Sensitivities;

namespace WitherAdvisor.Api.ModelCard;

/// <summary>What matters most for a batch, as a table.</summary>
internal static class TornadoTable
{
    public static string Of(Sensitivity sensitivity) => string.Join("\n\n", Enum.GetValues<SensitivityReach>()
        .Select(reach => Of(reach, [.. sensitivity.Bars.Where(bar => bar.Reach == reach)])));

    private static string Of(SensitivityReach reach, IReadOnlyList<SensitivityBar> bars) => MarkdownTable.Of(
        [SensitivityWording.Name(reach), "moved to", "ready", "moved to", "ready"],
        bars.Select(IReadOnlyList<string> (bar) =>
        [
            $"{SensitivityWording.Name(bar.Code)} ({Value(bar, bar.PlannedValue)})",
            Value(bar, bar.LowValue), SensitivityWording.Change(bar.ChangeAtLowHours),
            Value(bar, bar.HighValue), SensitivityWording.Change(bar.ChangeAtHighHours),
        ]));

    private static string Value(SensitivityBar bar, double value) => ShownNumber.Of(value, bar.Unit).RoundedText;
}
