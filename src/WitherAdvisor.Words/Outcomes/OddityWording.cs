using WitherAdvisor.Loft.Outcomes;
using static WitherAdvisor.Loft.Outcomes.OutcomeLimits;

namespace WitherAdvisor.Words.Outcomes;

/// <summary>What looks odd in an outcome, in a sentence each, SI units.</summary>
public static class OddityWording
{
    /// <summary>With the place as the form of an outcome names it.</summary>
    public static string Sentence(Wordbook words, OutcomeOddity oddity) => Sentence(words, oddity, Place(words, oddity.Place));

    /// <summary>With the place as the caller calls it.</summary>
    public static string Sentence(Wordbook words, OutcomeOddity oddity, string place) => oddity switch
    {
        OutcomeOddity.OutturnUnusual odd => words.Say(
            "outcome_oddity.outturn_unusual", ("outturn", $"{odd.Outturn * 100:0.#}"), ("least", LeastOutturn * 100), ("most", MostOutturn * 100)),
        OutcomeOddity.OvenUnusual odd => words.Say(
            "outcome_oddity.oven_unusual", ("moisture", $"{odd.MoistureWetBasis * 100:0.#}"), ("least", DriestOven * 100), ("most", WettestOven * 100)),
        OutcomeOddity.OvenAgainstWeight odd => words.Say(
            "outcome_oddity.oven_against_weight",
            ("moisture", $"{odd.GreenMoistureWetBasis * 100:0.#}"), ("least", DriestGreenLeaf * 100), ("most", WettestGreenLeaf * 100)),
        OutcomeOddity.HoursUnusual odd =>
            words.Say("outcome_oddity.hours_unusual", ("hours", $"{odd.HoursOnTrough:0.##}"), ("fewest", FewestHours), ("most", MostHours)),
        OutcomeOddity.TurnsUnusual odd => words.Say("outcome_oddity.turns_unusual", ("turns", odd.Turns), ("most", MostTurnsAnHour)),
        OutcomeOddity.AirTooHot odd =>
            words.Say("outcome_oddity.air_too_hot", ("place", place), ("dry_bulb", odd.DryBulbC), ("hottest", HottestC)),
        OutcomeOddity.DifferenceUnusual odd =>
            words.Say("outcome_oddity.difference_unusual", ("difference", $"{odd.DifferenceK:0.#}"), ("widest", WidestDifferenceK)),
        OutcomeOddity.LayersFarApart odd =>
            words.Say("outcome_oddity.layers_far_apart", ("apart", $"{odd.Apart * 100:0.#}"), ("widest", WidestLayerSpread * 100)),
        OutcomeOddity.SampleGainedWeight odd => words.Say(
            "outcome_oddity.sample_gained_weight", ("share", $"{odd.Share * 100:0.#}"), ("before", $"{odd.LeastBefore * 100:0.#}")),
        OutcomeOddity.SampleAgainstWeight odd => words.Say(
            "outcome_oddity.sample_against_weight", ("share", $"{odd.LeastShare * 100:0.#}"), ("points", $"{SampleAgainstBed * 100:0.#}")),
        _ => throw new ArgumentOutOfRangeException(nameof(oddity), oddity, "Nobody has said how this is told."),
    };

    /// <summary>Only air is named in a sentence: other oddities have one place.</summary>
    private static string Place(Wordbook words, OutcomePlace place) => place.Term switch
    {
        OutcomeTerm.AirSetDryBulb => DryBulb(words, words["outcome.air_set"], place),
        OutcomeTerm.AirMeasuredDryBulb => DryBulb(words, words["outcome.air_measured"], place),
        _ => "",
    };

    private static string DryBulb(Wordbook words, string list, OutcomePlace place) => words.Say(
        "outcome.air_row.field", ("list", list), ("row", place.Index.GetValueOrDefault() + 1), ("field", words["air.dry_bulb"]));
}
