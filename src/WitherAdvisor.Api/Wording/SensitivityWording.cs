using WitherAdvisor.Advice;

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

    /// <summary>"+1.2 h", "0 h", "not reached".</summary>
    public static string Change(double? hours) => hours switch
    {
        null => "not reached",
        { } some when Math.Abs(some) < NoHours => "0 h",
        > 0 => "+" + Figures.Hours(hours.Value),
        _ => Figures.Hours(hours.Value),
    };
}
