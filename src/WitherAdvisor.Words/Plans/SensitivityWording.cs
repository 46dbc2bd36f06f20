using WitherAdvisor.Sensitivities;
using WitherAdvisor.Words.Units;

namespace WitherAdvisor.Words.Plans;

/// <summary>Inputs that were moved to see what they do, in words.</summary>
public static class SensitivityWording
{
    private const double NoHours = 0.05;

    public static string Name(Wordbook words, string code) => Codes.Sentence(words.OfCode("sensitivity", code));

    /// <summary>"Water in the leaf: at 78.2 % ready 1.2 h sooner, at 81.8 % 1.3 h later."</summary>
    public static string Sentence(Wordbook words, InputSensitivity bar, PersonUnits units) => words.Say(
        "input_sensitivity.sentence",
        ("input", Name(words, bar.Code)),
        ("low", Value(words, bar, bar.LowValue, units)),
        ("change_at_low", InWords(words, bar.ChangeAtLowHours)),
        ("high", Value(words, bar, bar.HighValue, units)),
        ("change_at_high", InWords(words, bar.ChangeAtHighHours)));

    private static string Value(Wordbook words, InputSensitivity bar, double value, PersonUnits units) => bar.Unit switch
    {
        "K" => units.DifferenceText(value),
        "kg" => units.WeightText(value),
        _ => ShownNumber.Of(value, bar.Unit).Rounded(words),
    };

    private static string InWords(Wordbook words, double? change) => change switch
    {
        null => words["input_sensitivity.not_in_time"],
        { } hours when Math.Abs(hours) < NoHours => words["input_sensitivity.just_as_soon"],
        { } hours when hours < 0 => words.Say("input_sensitivity.sooner", ("hours", Figures.Hours(-hours))),
        { } hours => words.Say("input_sensitivity.later", ("hours", Figures.Hours(hours))),
    };

    /// <summary>"+1.2 h", "0 h", "not reached".</summary>
    public static string Change(Wordbook words, double? hours) => hours switch
    {
        null => words["input_sensitivity.not_reached"],
        { } some when Math.Abs(some) < NoHours => "0 h",
        > 0 => "+" + Figures.Hours(hours.Value),
        _ => Figures.Hours(hours.Value),
    };
}
