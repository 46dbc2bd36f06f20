using WitherAdvisor.Sensitivities;
using WitherAdvisor.Words;
using WitherAdvisor.Words.Plans;
using WitherAdvisor.Words.Units;

namespace WitherAdvisor.Api.ModelCard;

/// <summary>What matters most for a batch, as a table.</summary>
internal static class TornadoTable
{
    public static string Of(Wordbook words, Sensitivity sensitivity) => string.Join("\n\n", Enum.GetValues<SensitivityReach>()
        .Select(reach => Of(words, reach, [.. sensitivity.Inputs.Where(bar => bar.Reach == reach)])));

    private static string Of(Wordbook words, SensitivityReach reach, IReadOnlyList<InputSensitivity> bars) => MarkdownTable.Of(
        [words.Name(reach), words["tornado.moved_to"], words["tornado.ready"], words["tornado.moved_to"], words["tornado.ready"]],
        bars.Select(IReadOnlyList<string> (bar) =>
        [
            $"{SensitivityWording.Name(words, bar.Code)} ({Value(words, bar, bar.PlannedValue)})",
            Value(words, bar, bar.LowValue), SensitivityWording.Change(words, bar.ChangeAtLowHours),
            Value(words, bar, bar.HighValue), SensitivityWording.Change(words, bar.ChangeAtHighHours),
        ]));

    private static string Value(Wordbook words, InputSensitivity bar, double value) => ShownNumber.Of(value, bar.Unit).Rounded(words);
}
