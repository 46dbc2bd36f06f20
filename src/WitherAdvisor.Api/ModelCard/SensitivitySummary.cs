using WitherAdvisor.Plans.Uncertainty;
using WitherAdvisor.Sensitivities;
using WitherAdvisor.Words;
using WitherAdvisor.Words.Plans;
using WitherAdvisor.Words.Units;

namespace WitherAdvisor.Api.ModelCard;

/// <summary>What matters most for a batch, in two sentences.</summary>
internal static class SensitivitySummary
{
    private const int MostNamed = 3;

    public static string Of(Wordbook words, Sensitivity sensitivity)
    {
        string[] widest =
        [
            .. sensitivity.Widest(MostNamed).Select(bar => SensitivityWording.Name(words, bar.Code).ToLowerInvariant()),
        ];
        return words.Say(
            "tornado.summary",
            ("hours", Figures.Hours(sensitivity.PlannedHours)), ("band", Band(words, sensitivity.ReadyHours)), ("widest", string.Join("; ", widest)));
    }

    private static string Band(Wordbook words, Percentiles hours) =>
        words.Say("tornado.band", ("from", Hours(words, hours.P10)), ("to", Hours(words, hours.P90)));

    private static string Hours(Wordbook words, double? hours) => hours is { } known ? Figures.Hours(known) : words["tornado.later_than_looked"];
}
