using WitherAdvisor.Plans;
using WitherAdvisor.Plans.Explaining;
using WitherAdvisor.Words.Units;

namespace WitherAdvisor.Words.Plans;

/// <summary>What a factor did to the plan, as a sentence that can be read aloud.</summary>
public static class FactorWording
{
    private const double NoHours = 0.05;
    private const double NoKelvin = 0.05;

    public static string Condition(Wordbook words, string code) => Codes.Sentence(words.OfCode("factor", code));

    /// <summary>"Without the rain or dew on the leaf: 2.4 h shorter, plenum 1.2 °C cooler, 4 turns."</summary>
    public static string Sentence(Wordbook words, FactorEffect effect, WitherPlan planned, PersonUnits units) =>
        effect.HoursChange is { } hours
            ? words.Say(
                "factor_effect.changes",
                ("condition", Condition(words, effect.Code)), ("changes", string.Join(", ", Changes(words, effect, hours, planned, units))))
            : words.Say("factor_effect.never_ready", ("condition", Condition(words, effect.Code)));

    private static IEnumerable<string> Changes(
        Wordbook words, FactorEffect effect, double hours, WitherPlan planned, PersonUnits units)
    {
        yield return Math.Abs(hours) < NoHours ? words["factor_effect.just_as_long"]
            : hours < 0 ? words.Say("factor_effect.shorter", ("hours", Figures.Hours(-hours)))
            : words.Say("factor_effect.longer", ("hours", Figures.Hours(hours)));
        if (effect.PlenumDryBulbChangeK is { } change && Math.Abs(change) >= NoKelvin)
        {
            string key = change < 0 ? "factor_effect.plenum_cooler" : "factor_effect.plenum_warmer";
            yield return words.Say(key, ("difference", units.DifferenceText(Math.Abs(change))));
        }

        if (Turning(words, effect, planned) is { } turning)
        {
            yield return turning;
        }
    }

    /// <summary>Null where it is turned as planned. Advice from before turns were counted tells the interval.</summary>
    private static string? Turning(Wordbook words, FactorEffect effect, WitherPlan planned) => effect.Turns switch
    {
        null when effect.TurnIntervalHours == planned.TurnIntervalHours => null,
        null => effect.TurnIntervalHours is { } interval ? words.Say("factor_effect.turned_every", ("hours", interval)) : words["factor_effect.no_turn"],
        { } turns when turns == planned.TurnHours.Count => null,
        0 => words["factor_effect.no_turn"],
        1 => words["factor_effect.one_turn"],
        { } turns => words.Say("factor_effect.turns", ("turns", turns)),
    };
}
