using WitherAdvisor.Api.ModelCard;
using WitherAdvisor.Sensitivities;

namespace WitherAdvisor.Api.Wording;

/// <summary>Inputs that were moved to see what they do, in words.</summary>
public static class SensitivityWording
{
    private const double NoHours = 0.05;

    private static readonly Dictionary<string, string> Names = new(StringComparer.Ordinal)
    {
        ["tissue_moisture"] = "Water in the leaf",
        ["surface_water"] = "Water on the leaf",
        ["skin_conductance"] = "How freely the skin passes water",
        ["boundary_conductance"] = "How freely the air takes it up",
        ["surface_capacity"] = "Water that wets the whole leaf",
        ["airflow"] = "Air the fan really blows",
        ["held_difference"] = "Hygrometric difference really held",
        ["night_air"] = "The night not as foretold",
        ["green_weight"] = "Green weight on the trough",
        ["plucking_time"] = "Time of plucking",
        ["loading_time"] = "Time of loading",
    };

    /// <summary>Codes that have words of their own.</summary>
    public static IReadOnlyCollection<string> Known => Names.Keys;

    public static string Name(string code) => Names.GetValueOrDefault(code) ?? Codes.Sentence(Codes.Plain(code));

    public static string Name(SensitivityReach reach) => reach switch
    {
        SensitivityReach.P10ToP90 => "What is uncertain",
        SensitivityReach.Misjudged => "What a person may misjudge",
        _ => throw new ArgumentOutOfRangeException(nameof(reach), reach, "No words for this reach."),
    };

    /// <summary>"Water in the leaf: at 78.2 % ready 1.2 h sooner, at 81.8 % 1.3 h later."</summary>
    public static string Sentence(SensitivityBar bar, PersonUnits units) =>
        $"{Name(bar.Code)}: at {Value(bar, bar.LowValue, units)} ready {InWords(bar.ChangeAtLowHours)}, at {Value(bar, bar.HighValue, units)} {InWords(bar.ChangeAtHighHours)}.";

    private static string Value(SensitivityBar bar, double value, PersonUnits units) => bar.Unit switch
    {
        "K" => units.DifferenceText(value),
        "kg" => units.WeightText(value),
        _ => ShownNumber.Of(value, bar.Unit).RoundedText,
    };

    private static string InWords(double? change) => change switch
    {
        null => "not in time",
        { } hours when Math.Abs(hours) < NoHours => "just as soon",
        { } hours => $"{Figures.Hours(Math.Abs(hours))} {(hours < 0 ? "sooner" : "later")}",
    };

    /// <summary>"+1.2 h", "0 h", "not reached".</summary>
    public static string Change(double? hours) => hours switch
    {
        null => "not reached",
        { } some when Math.Abs(some) < NoHours => "0 h",
        > 0 => "+" + Figures.Hours(hours.Value),
        _ => Figures.Hours(hours.Value),
    };
}
