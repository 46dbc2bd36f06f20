using WitherAdvisor.InventedEstate;
using WitherAdvisor.Recalibration;

namespace WitherAdvisor.SyntheticSeasons;

/// <summary>What goes wrong when a log is kept at four in the morning.</summary>
internal static class GrossMistake
{
    public static ObservedWither In(ObservedWither noted, SplitMix64 random) => (int)(random.NextFraction() * 3) switch
    {
        // A digit of a weight.
        0 when noted.Found.WitheredWeightKg is { } weight => noted with
        {
            Found = noted.Found with { WitheredWeightKg = weight * (random.NextFraction() < 0.5 ? random.Between(0.6, 0.8) : random.Between(1.2, 1.4)) },
        },

        // The hour of another trough.
        1 => noted with { HoursOnTrough = noted.HoursOnTrough * (random.NextFraction() < 0.5 ? random.Between(0.5, 0.7) : random.Between(1.4, 1.8)) },

        // The weight of another trough.
        _ => noted with { GreenWeightKg = noted.GreenWeightKg * (random.NextFraction() < 0.5 ? random.Between(0.65, 0.8) : random.Between(1.25, 1.5)) },
    };
}
