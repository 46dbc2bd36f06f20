using WitherAdvisor.Bed;
using WitherAdvisor.Outcomes;

namespace WitherAdvisor.Loft.Recalibrating.Observing;

/// <summary>Air under the mesh at each whole hour of a wither, from what was read or set of it.</summary>
public static class ObservedAir
{
    /// <summary>From readings: between two of them it runs evenly. Empty where none tells both heat and humidity.</summary>
    public static IReadOnlyList<InletAir> Read(IReadOnlyList<AirHeld> rows, double hours, double pressurePa) =>
        ByHour(Known(rows, pressurePa), hours, Between);

    /// <summary>From settings: each holds until the next.</summary>
    public static IReadOnlyList<InletAir> Held(IReadOnlyList<AirHeld> rows, double hours, double pressurePa) =>
        ByHour(Known(rows, pressurePa), hours, (from, _, _) => from.Air);

    /// <summary>Mean share of the trough's full flow over the hours; 1 where nobody said: most fans have one speed.</summary>
    public static double FanShare(IReadOnlyList<AirHeld> rows, double hours)
    {
        AirHeld[] told = [.. rows.Where(row => row.FanShare is not null && row.FromHour < hours).OrderBy(row => row.FromHour)];
        double sum = told.Select((row, i) => row.FanShare!.Value * ((i + 1 < told.Length ? told[i + 1].FromHour : hours) - (i == 0 ? 0 : row.FromHour))).Sum();
        return told.Length == 0 ? 1 : sum / hours;
    }

    private static InletAir Between((double Hour, InletAir Air) from, (double Hour, InletAir Air) to, double hour) =>
        InletAir.Between(from.Air, to.Air, Math.Clamp((hour - from.Hour) / (to.Hour - from.Hour), 0, 1));

    private static List<InletAir> ByHour(
        List<(double Hour, InletAir Air)> known, double hours, Func<(double Hour, InletAir Air), (double Hour, InletAir Air), double, InletAir> at)
    {
        List<InletAir> air = [];
        for (int hour = 0; known.Count > 0 && hour <= Math.Ceiling(hours); hour++)
        {
            int from = Math.Max(known.FindLastIndex(row => row.Hour <= hour), 0);
            air.Add(from + 1 < known.Count && hour >= known[from].Hour ? at(known[from], known[from + 1], hour) : known[from].Air);
        }

        return air;
    }

    /// <summary>Of a row without humidity that of the row before holds: heat adds no water.</summary>
    private static List<(double Hour, InletAir Air)> Known(IReadOnlyList<AirHeld> rows, double pressurePa)
    {
        List<(double, InletAir)> known = [];
        double? humidityRatio = null;
        foreach (AirHeld row in rows.OrderBy(row => row.FromHour).DistinctBy(row => row.FromHour))
        {
            if (row.DryBulbC is not { } dryBulbC)
            {
                continue;
            }

            humidityRatio = row.DifferenceK is { } differenceK
                ? InletAir.FromDifference(dryBulbC, differenceK, pressurePa).HumidityRatio
                : humidityRatio;
            if (humidityRatio is { } told)
            {
                known.Add((row.FromHour, new(dryBulbC, told)));
            }
        }

        return known;
    }
}
