using WitherAdvisor.ReferenceChecks.Cases;
using WitherAdvisor.Soil;

namespace WitherAdvisor.ReferenceChecks.Runners;

/// <summary>FAO-56's soil water: examples 36 and 37.</summary>
public sealed class RootZoneRunner : IRunner
{
    /// <summary>FAO-56 prints table 22's p at 5 mm a day, where its adjustment is nothing.</summary>
    private const double DemandOfTableMm = 5;

    public string Name => "root_zone";

    public double Ours(ReferenceCase given) => given.Quantity switch
    {
        "taw_mm" => TotalMm(given.Inputs),
        "raw_mm" => new RootZone(TotalMm(given.Inputs), given.Inputs.Number("depletion_fraction"), 1).ReadilyAvailableMm(DemandOfTableMm),
        "stress" => DayOfExample37(given.Inputs).Stress,
        "given_off_mm" => DayOfExample37(given.Inputs).GivenOffMm,
        "depletion_at_end_mm" => DayOfExample37(given.Inputs).DepletionMm,
        _ => throw new InvalidDataException($"unknown quantity {given.Quantity}"),
    };

    private static double TotalMm(Inputs row) => RootZone.TotalAvailable(
        row.Number("field_capacity_m3_per_m3"), row.Number("wilting_point_m3_per_m3"), row.Number("root_depth_m"));

    /// <summary>A tomato without rain: TAW 160 mm, p 0.4 not adjusted, K_c 1.2, ET_0 5 mm, depletion 55 mm at the start.</summary>
    private static RootZoneDay DayOfExample37(Inputs row)
    {
        var soil = new RootZone(160, 0.4, 1.2, AdjustsDepletionFraction: false);
        RootZoneDay day = soil.Day(55, 0, 5);
        for (int i = 1; i < row.Number("day"); i++)
        {
            day = soil.Day(day.DepletionMm, 0, 5);
        }

        return day;
    }
}
