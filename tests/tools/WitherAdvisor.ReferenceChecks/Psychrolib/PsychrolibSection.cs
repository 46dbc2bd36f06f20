using System.Globalization;
using WitherAdvisor.Air;
using WitherAdvisor.ReferenceChecks.Cases;
using WitherAdvisor.ReferenceChecks.Report;
using WitherAdvisor.ReferenceChecks.SlowAir;

namespace WitherAdvisor.ReferenceChecks.Psychrolib;

/// <summary>psychrolib run now over a grid, beside our ideal gas; and both beside the handbook's table of real air.</summary>
public static class PsychrolibSection
{
    private const string Source = "psychrolib 1.1.1";

    private static readonly Tolerance SameEquations = Tolerance.Of("relative", 1e-6, "the same equations in double precision");

    private static readonly Tolerance Iterated = Tolerance.Of("absolute", 0.001, "psychrolib stops iterating at 0.001 K");

    public static Section Run()
    {
        IReadOnlyList<PsychrolibAir> grid = PsychrolibAir.Grid();
        List<PsychrolibAir> ambiguous = [.. grid.Where(IsAmbiguous)];
        return new(
            "Moist air: psychrolib run over a grid, −5 to 50 °C, 1 to 100 %, 0 to 2,500 m",
            "Worked out now by `Psychrolib/node/grid.mjs`, by the ideal-gas equations; ours in that formulation. Source: npm psychrolib 1.1.1. Licence: MIT.",
            [.. grid.SelectMany(Rows)],
            [
                "",
                $"In {ambiguous.Count} of {grid.Count} states, near freezing, a wick of water and one of ice both satisfy their equation. Ours takes water;",
                "psychrolib takes what its halving meets. Their wet bulbs are left out here and stand against the solver of the next section.",
                .. HandbookTable.Lines(grid),
            ]);
    }

    private static IEnumerable<CheckRow> Rows(PsychrolibAir theirs)
    {
        AirState ours = AirState.FromRelativeHumidity(
            theirs.DryBulbC, theirs.RelativeHumidity, StandardAtmosphere.PressurePa(theirs.ElevationM), MoistAirFormulation.IdealGas);
        string where = string.Create(CultureInfo.InvariantCulture, $"z={theirs.ElevationM};t={theirs.DryBulbC};rh={theirs.RelativeHumidity}");
        yield return new("pressure_pa", where, Source, ours.PressurePa, theirs.PressurePa, SameEquations);
        yield return new("saturation_pa", where, Source, Saturation.PressurePa(ours.DryBulbC), theirs.SaturationPa, SameEquations);
        yield return new("humidity_ratio", where, Source, ours.HumidityRatio, theirs.HumidityRatio, SameEquations);
        if (!IsAmbiguous(theirs))
        {
            yield return new("wet_bulb_c", where, Source, ours.WetBulbC, theirs.WetBulbC, Iterated);
        }

        yield return new("dew_point_c", where, Source, ours.DewPointC, theirs.DewPointC, Iterated);
        yield return new("enthalpy_j_per_kg", where, Source, 1000 * ours.EnthalpyKJPerKg, theirs.EnthalpyJPerKg, SameEquations);
        yield return new("volume_m3_per_kg", where, Source, ours.SpecificVolumeM3PerKg, theirs.VolumeM3PerKg, SameEquations);
    }

    private static bool IsAmbiguous(PsychrolibAir air) =>
        new PlainAir(air.PressurePa, RealGas: false).WaterAndIceWouldBothDo(air.DryBulbC, air.HumidityRatio);
}
