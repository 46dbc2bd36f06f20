using System.Globalization;
using WitherAdvisor.Air;
using WitherAdvisor.ReferenceChecks.Cases;
using WitherAdvisor.ReferenceChecks.Report;

namespace WitherAdvisor.ReferenceChecks.Psychrolib;

/// <summary>Saturated air by the handbook's table of real moist air, by us and by psychrolib: how far each is off.</summary>
internal static class HandbookTable
{
    private const string HumidityRatio = "saturated_humidity_ratio";
    private const string Enthalpy = "saturated_enthalpy_j_per_kg";

    public static IReadOnlyList<string> Lines(IReadOnlyList<PsychrolibAir> grid)
    {
        var saturated = grid.Where(air => air.ElevationM == 0 && air.RelativeHumidity == 1).ToDictionary(air => air.DryBulbC);
        return
        [
            "",
            "Saturated air at one atmosphere beside the handbook's table of real moist air (sources as in the rows of `fixtures/moist-air/checks.csv`):",
            "",
            "| | °C | handbook | ours, real gas | off | psychrolib | off |",
            "|---|--:|--:|--:|--:|--:|--:|",
            .. Published(HumidityRatio).Select(given => Line(given, Ours(given).HumidityRatio, saturated[T(given)].HumidityRatio, 7)),
            .. Published(Enthalpy).Select(given => Line(given, 1000 * Ours(given).EnthalpyKJPerKg, saturated[T(given)].SaturatedEnthalpyJPerKg, 0)),
        ];
    }

    /// <summary>From 0 to 50 °C.</summary>
    private static IEnumerable<ReferenceCase> Published(string quantity) => CaseFiles.All
        .Where(file => file.Runner == "moist_air")
        .SelectMany(CaseReader.Read)
        .Where(given => given.Quantity == quantity && given.Inputs.Text("formulation") == "real_gas" && T(given) >= 0)
        .OrderBy(T);

    private static double T(ReferenceCase given) => given.Inputs.Number("t");

    private static AirState Ours(ReferenceCase given) => AirState.FromRelativeHumidity(T(given), 1, StandardAtmosphere.SeaLevelPressurePa);

    private static string Line(ReferenceCase given, double ours, double theirs, int decimals) =>
        $"| {given.Quantity} | {given.Inputs.Text("t")} | {given.Printed} | {Numbers.Fixed(ours, decimals)} | {Off(ours, given)} | {Numbers.Fixed(theirs, decimals)} | {Off(theirs, given)} |";

    private static string Off(double value, ReferenceCase given) =>
        (100 * (value / given.Expected - 1)).ToString("+0.000;−0.000;0.000", CultureInfo.InvariantCulture) + " %";
}
