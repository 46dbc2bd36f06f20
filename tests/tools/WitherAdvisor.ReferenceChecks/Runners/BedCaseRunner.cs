using System.Globalization;
using WitherAdvisor.Leaf;
using WitherAdvisor.ReferenceChecks.Cases;

namespace WitherAdvisor.ReferenceChecks.Runners;

/// <summary>The cases of fixtures/bed/bed-cases.json, at the layers and step (s) that the description gives.</summary>
public sealed class BedCaseRunner : IRunner
{
    private readonly Dictionary<(string Id, string Layers, string StepS), BedCaseCourse> courses = [];

    public string Name => "bed_case";

    public double Ours(ReferenceCase given)
    {
        Inputs row = given.Inputs;
        string[] path = given.Quantity.Split('.');
        return path switch
        {
            ["result", "hygrometric_difference_k"] => BedCaseCourse.Plenum(row).HygrometricDifferenceK,
            ["result", "outturn_percent_of_green_weight"] => 100 * OutturnOfGreen(row),
            ["result", "hours_to_target"] => Course(row).HoursToTarget ?? double.PositiveInfinity,
            ["result", "hours_to_surface_dry"] => Course(row).HoursToSurfaceDry ?? double.PositiveInfinity,
            ["result", "max_spread_wb_points"] => 100 * Course(row).LargestSpread,
            [string curve, string place, "1"] => 100 * Course(row).MoistureByHour[Hour(row, curve, place)],
            [string curve, string place, "2"] => 100 * Course(row).SpreadByHour[Hour(row, curve, place)],
            _ => throw new InvalidDataException($"unknown quantity {given.Quantity}"),
        };
    }

    private BedCaseCourse Course(Inputs row)
    {
        (string, string, string) key = (row.Text("id"), row.Text("layers"), row.Text("step_s"));
        if (!courses.TryGetValue(key, out BedCaseCourse? course))
        {
            course = new(row, int.Parse(row.Text("layers"), CultureInfo.InvariantCulture), row.Number("step_s"));
            courses.Add(key, course);
        }

        return course;
    }

    private static int Hour(Inputs row, string curve, string place) => (int)row.Number($"{curve}.{place}.0");

    private static double OutturnOfGreen(Inputs row)
    {
        var leaf = new LeafState(row.Number("moisture_wb"), row.Number("surface_water_kg_per_kg"));
        return leaf.DryMatterKg(1) * (1 + Moisture.DryBasis(row.Number("target_wb")));
    }
}
