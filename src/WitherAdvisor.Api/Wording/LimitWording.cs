using WitherAdvisor.Plans;

namespace WitherAdvisor.Api.Wording;

/// <summary>Limits and wishes in words, with what is allowed and what a plan comes to.</summary>
public static class LimitWording
{
    public static string Name(LimitKind limit) => limit switch
    {
        LimitKind.PlenumDryBulb => "dry bulb under the mesh",
        LimitKind.HygrometricDifference => "hygrometric difference under the mesh",
        LimitKind.ShortestTimeSincePlucking => "chemical wither, shortest time since plucking",
        LimitKind.LongestTimeSincePlucking => "longest time since plucking",
        LimitKind.TargetMoisture => "moisture at the stop",
        LimitKind.Spread => "spread between layers",
        LimitKind.ReadyBy => "wanted ready-by time",
        LimitKind.WantedHygrometricDifference => "wanted hygrometric difference",
        LimitKind.AmbientAir => "air at the loft",
        _ => throw new ArgumentOutOfRangeException(nameof(limit), limit, "No words for this limit."),
    };

    /// <summary>"Dry bulb under the mesh: at most 35.0 °C; the plan comes to 35.0 °C."</summary>
    public static string Sentence(LimitNotice notice, PersonUnits units)
    {
        string name = Codes.Sentence(Name(notice.Limit));
        return (notice.Allowed, notice.Reached) switch
        {
            _ when notice.Limit == LimitKind.AmbientAir => $"{name}: no reading and no forecast is known to plan with.",
            ({ } allowed, { } reached) => $"{name}: {Bound(notice.Limit)} {Amount(notice.Limit, allowed, units)}; the plan comes to {Amount(notice.Limit, reached, units)}.",
            ({ } allowed, null) => $"{name}: {Bound(notice.Limit)} {Amount(notice.Limit, allowed, units)}; no plan comes to that.",
            (null, { } reached) => $"{name}: the plan comes to {Amount(notice.Limit, reached, units)}.",
            _ => $"{name} stands in the way.",
        };
    }

    private static string Bound(LimitKind limit) => limit switch
    {
        LimitKind.ShortestTimeSincePlucking => "at least",
        LimitKind.TargetMoisture or LimitKind.WantedHygrometricDifference => "wanted",
        LimitKind.ReadyBy => "wanted within",
        _ => "at most",
    };

    private static string Amount(LimitKind limit, double amount, PersonUnits units) => limit switch
    {
        LimitKind.PlenumDryBulb => units.TemperatureText(amount),
        LimitKind.HygrometricDifference or LimitKind.WantedHygrometricDifference => units.DifferenceText(amount),
        LimitKind.TargetMoisture => Figures.Moisture(amount),
        LimitKind.Spread => Figures.MoisturePoints(amount),
        LimitKind.ReadyBy => $"{Figures.Hours(amount)} of loading",
        _ => Figures.Hours(amount),
    };
}
