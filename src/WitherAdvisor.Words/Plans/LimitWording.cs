using WitherAdvisor.Plans;
using WitherAdvisor.Words.Units;

namespace WitherAdvisor.Words.Plans;

/// <summary>Limits and wishes in words, with what is allowed and what a plan comes to.</summary>
public static class LimitWording
{
    /// <summary>"Dry bulb under the mesh: at most 35.0 °C; the plan comes to 35.0 °C."</summary>
    public static string Sentence(Wordbook words, LimitNotice notice, PersonUnits units)
    {
        string name = Codes.Sentence(words.Name(notice.Limit));
        return (notice.Allowed, notice.Reached) switch
        {
            _ when notice.Limit == LimitKind.AmbientAir => words.Say("limit.nothing_to_plan_with", ("limit", name)),
            ({ } allowed, { } reached) => words.Say(
                $"limit.{Bound(notice.Limit)}.reached", ("limit", name), ("allowed", Amount(words, notice.Limit, allowed, units)), ("reached", Amount(words, notice.Limit, reached, units))),
            ({ } allowed, null) => words.Say($"limit.{Bound(notice.Limit)}.not_reached", ("limit", name), ("allowed", Amount(words, notice.Limit, allowed, units))),
            (null, { } reached) => words.Say("limit.reached", ("limit", name), ("reached", Amount(words, notice.Limit, reached, units))),
            _ => words.Say("limit.in_the_way", ("limit", name)),
        };
    }

    private static string Bound(LimitKind limit) => limit switch
    {
        LimitKind.ShortestTimeSincePlucking => "at_least",
        LimitKind.TargetMoisture or LimitKind.WantedHygrometricDifference => "wanted",
        LimitKind.ReadyBy => "wanted_within",
        LimitKind.HeaterCapacity => "short_of",
        _ => "at_most",
    };

    private static string Amount(Wordbook words, LimitKind limit, double amount, PersonUnits units) => limit switch
    {
        LimitKind.PlenumDryBulb or LimitKind.LeafTemperature => units.TemperatureText(amount),
        LimitKind.HygrometricDifference or LimitKind.WantedHygrometricDifference => units.DifferenceText(amount),
        LimitKind.TargetMoisture => Figures.Moisture(words, amount),
        LimitKind.Spread => Figures.MoisturePoints(words, amount),
        LimitKind.HeaterCapacity => Figures.KiloWatts(amount),
        LimitKind.ReadyBy => words.Say("figure.hours_of_loading", ("hours", Figures.Hours(amount))),
        _ => Figures.Hours(amount),
    };
}
