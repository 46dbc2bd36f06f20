using System.Globalization;
using WitherAdvisor.ReferenceChecks.Cases;

namespace WitherAdvisor.ReferenceChecks.Runners;

/// <summary>The cases of fixtures/bed/growing-bed-cases.json, at the layers and step (s) that the description gives.</summary>
public sealed class GrowingBedRunner : IRunner
{
    private readonly Dictionary<(string Id, string Layers, string StepS), GrowingBedCourse> courses = [];

    public string Name => "growing_bed_case";

    public double Ours(ReferenceCase given)
    {
        Inputs row = given.Inputs;
        return given.Quantity.Split('.') switch
        {
            ["result", "hygrometric_difference_first_stage_k"] => GrowingBedCourse.Plenum(row, 0).HygrometricDifferenceK,
            ["result", "hours_to_target"] => Course(row).HoursToTarget ?? double.PositiveInfinity,
            ["result", "max_tissue_spread_wb_points_after_last_lot"] => 100 * Course(row).LargestSpread,
            [string curve, string place, "1"] => Course(row).WeightByHour[Hour(row, curve, place)],
            [string curve, string place, "2"] => 100 * Course(row).MoistureByHour[Hour(row, curve, place)],
            [string curve, string place, "3"] => 100 * Course(row).SpreadByHour[Hour(row, curve, place)],
            _ => throw new InvalidDataException($"unknown quantity {given.Quantity}"),
        };
    }

    private GrowingBedCourse Course(Inputs row)
    {
        (string, string, string) key = (row.Text("id"), row.Text("layers"), row.Text("step_s"));
        if (!courses.TryGetValue(key, out GrowingBedCourse? course))
        {
            course = new(row, int.Parse(row.Text("layers"), CultureInfo.InvariantCulture), row.Number("step_s"));
            courses.Add(key, course);
        }

        return course;
    }

    private static int Hour(Inputs row, string curve, string place) => (int)row.Number($"{curve}.{place}.0");
}
