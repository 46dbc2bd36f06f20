using System.Globalization;
using WitherAdvisor.ReferenceChecks.Cases;

namespace WitherAdvisor.ReferenceChecks.Psychrolib;

/// <summary>One state of air by psychrolib. Elevation in m, dry bulb in °C, relative humidity a fraction; pressures in Pa.</summary>
public sealed record PsychrolibAir(
    double ElevationM, double DryBulbC, double RelativeHumidity, double PressurePa, double SaturationPa, double HumidityRatio,
    double WetBulbC, double DewPointC, double EnthalpyJPerKg, double VolumeM3PerKg, double SaturatedEnthalpyJPerKg)
{
    private const string Folder = "tests/tools/WitherAdvisor.ReferenceChecks/Psychrolib/node";

    /// <summary>The whole grid, worked out now by <c>grid.mjs</c>.</summary>
    public static IReadOnlyList<PsychrolibAir> Grid() =>
        [.. NodeProgram.Lines(RepositoryFiles.InRoot(Folder), "grid.mjs").Skip(1).Select(Read)];

    private static PsychrolibAir Read(string line)
    {
        double[] v = [.. line.Split(',').Select(cell => double.Parse(cell, CultureInfo.InvariantCulture))];
        return new(v[0], v[1], v[2], v[3], v[4], v[5], v[6], v[7], v[8], v[9], v[10]);
    }
}
