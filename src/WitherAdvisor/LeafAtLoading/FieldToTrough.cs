using WitherAdvisor.Leaf;

namespace WitherAdvisor.LeafAtLoading;

/// <summary>What leaf loses between plucking and trough: its own respiration drives water off.</summary>
internal static class FieldToTrough
{
    /// <summary>Its name among the pieces of an estimate.</summary>
    public const string Code = "field_to_trough";

    /// <summary>
    /// kg per kg of leaf and hour: 1.2 W/kg of respiration heat (0.6 to 1.8, from memory) all spent on evaporation
    /// at 2.45 MJ/kg.
    /// </summary>
    public const double LossPerHour = 0.0018;

    /// <summary>Of that loss, relative: a third either way is the range of the heat.</summary>
    public const double RelativeError = 0.33;

    private const double LongestHours = 24;

    /// <summary>Leaf that comes in with less on it may have run out on the way, kg/kg (from memory).</summary>
    private const double HardlyWetKgPerKg = 0.02;

    /// <summary>Mean hours between plucking and loading, 0 or above.</summary>
    public static double Hours(PluckedLeaf leaf)
    {
        double fromH = (leaf.LoadedAt - leaf.PluckedFrom).TotalHours;
        double toH = (leaf.LoadedAt - leaf.PluckedTo).TotalHours;
        return Math.Clamp((Math.Max(fromH, toH) + toH) / 2, 0, LongestHours);
    }

    /// <summary>Water lost in so many hours, kg per kg of leaf.</summary>
    public static double LossKgPerKg(double hours) => LossPerHour * hours;

    /// <summary>
    /// How much of the loss the water on the leaf bore, kg/kg: it goes first, so leaf that comes in wet lost none of
    /// its own.
    /// </summary>
    public static double TakenFromSurfaceKgPerKg(double hours, Estimate surface)
    {
        if (surface.Origin is EstimateOrigin.Measured or EstimateOrigin.ByFeel)
        {
            return LossKgPerKg(hours) * Math.Min(surface.Value / HardlyWetKgPerKg, 1);
        }

        foreach (Contribution piece in surface.Contributions)
        {
            if (piece.Code == Code)
            {
                return -piece.Amount;
            }
        }

        return 0;
    }

    /// <summary>Moisture (wet basis) of leaf after it lost some of its water, kg per kg of leaf.</summary>
    public static double MoistureAfterWetBasis(double moistureWetBasis, double lostKgPerKg) =>
        (moistureWetBasis - lostKgPerKg) / (1 - lostKgPerKg);
}
