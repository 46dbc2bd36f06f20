using WitherAdvisor.Advice;

namespace WitherAdvisor.Api.Wording;

/// <summary>What a factor did to the plan, as a sentence that can be read aloud.</summary>
public static class FactorWording
{
    private const double NoHours = 0.05;
    private const double NoKelvin = 0.05;

    private static readonly Dictionary<string, string> Conditions = new(StringComparer.Ordinal)
    {
        ["without_surface_water"] = "Without the water on the leaf",
        ["without_rain"] = "Without the rain on the leaf",
        ["at_sea_level"] = "At sea level",
    };

    public static string Condition(string code) => Conditions.GetValueOrDefault(code) ?? Codes.Sentence(Codes.Plain(code));

    /// <summary>"Without the rain on the leaf: 2.4 h shorter, plenum 1.2 °C cooler, turned every 1 h."</summary>
    public static string Sentence(FactorEffect effect, int? plannedTurnIntervalHours, PersonUnits units) =>
        effect.HoursChange is { } hours
            ? $"{Condition(effect.Code)}: {string.Join(", ", Changes(effect, hours, plannedTurnIntervalHours, units))}."
            : $"{Condition(effect.Code)}: no plan would be possible.";

    private static IEnumerable<string> Changes(
        FactorEffect effect, double hours, int? plannedTurnIntervalHours, PersonUnits units)
    {
        yield return Math.Abs(hours) < NoHours ? "just as long" : $"{Figures.Hours(Math.Abs(hours))} {(hours < 0 ? "shorter" : "longer")}";
        if (effect.PlenumDryBulbChangeK is { } change && Math.Abs(change) >= NoKelvin)
        {
            yield return $"plenum {units.DifferenceText(Math.Abs(change))} {(change < 0 ? "cooler" : "warmer")}";
        }

        if (effect.TurnIntervalHours != plannedTurnIntervalHours)
        {
            yield return effect.TurnIntervalHours is { } interval ? $"turned every {interval} h" : "no turn needed";
        }
    }
}
