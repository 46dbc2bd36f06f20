using WitherAdvisor.Plans.Explaining;

namespace WitherAdvisor.Api.Wording;

/// <summary>What a factor did to the plan, as a sentence that can be read aloud.</summary>
public static class FactorWording
{
    private const double NoHours = 0.05;
    private const double NoKelvin = 0.05;

    private static readonly Dictionary<string, string> Conditions = new(StringComparer.Ordinal)
    {
        ["without_surface_water"] = "Without the rain or dew on the leaf",
        ["without_drought"] = "Without the drought",
        ["at_sea_level"] = "At sea level",
        ["if_air_stayed_as_at_loading"] = "If the air outside stayed as it was at loading",
        ["spread_a_fifth_thinner"] = "With the leaf spread a fifth thinner",
        ["without_ready_by"] = "Without the wanted ready-by time",
    };

    /// <summary>Codes that have words of their own.</summary>
    public static IReadOnlyCollection<string> Known => Conditions.Keys;

    public static string Condition(string code) => Conditions.GetValueOrDefault(code) ?? Codes.Sentence(Codes.Plain(code));

    /// <summary>"Without the rain or dew on the leaf: 2.4 h shorter, plenum 1.2 °C cooler, turned every 1 h."</summary>
    public static string Sentence(FactorEffect effect, int? plannedTurnIntervalHours, PersonUnits units) =>
        effect.HoursChange is { } hours
            ? $"{Condition(effect.Code)}: {string.Join(", ", Changes(effect, hours, plannedTurnIntervalHours, units))}."
            : $"{Condition(effect.Code)}: the leaf would not be ready in time.";

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
