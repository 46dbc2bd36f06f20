using WitherAdvisor.Advice;
using WitherAdvisor.Air;
using WitherAdvisor.Coefficients;
using WitherAdvisor.Leaf;
using WitherAdvisor.Readings;
using WitherAdvisor.ReferenceChecks.Cases;
using WitherAdvisor.Sites;

namespace WitherAdvisor.ReferenceChecks.Runners;

/// <summary>
/// A batch on a trough in steady air. Inputs: z in m; t in °C with rh (fraction) or ambient_hd (K); load in kg/m² without
/// surface water; moisture, surface, target as fractions; style long or short.
/// </summary>
internal static class LoftInputs
{
    private const double AreaM2 = 41;

    private static readonly DateTimeOffset LoadedAt = new(2026, 6, 1, 17, 0, 0, TimeSpan.Zero);

    public static AdviceRequest Request(Inputs inputs)
    {
        double surface = inputs.Number("surface");
        return new(
            new Site(inputs.Number("z"), 7, 80, Site.UsualHotAirC, Style(inputs)),
            new(AreaM2),
            new(
                new LeafLabel("Invented division", "Field 1", null, null, LeafStandard.Fine),
                LoadedAt.AddHours(-4), LoadedAt.AddHours(-2), LoadedAt, inputs.Number("load") * (1 + surface) * AreaM2,
                MeasuredSurfaceWaterKgPerKg: surface, MeasuredMoistureWetBasis: inputs.Number("moisture")),
            Steady(inputs, -240, 0), [], Steady(inputs, 1, 36), new WitherCoefficients());
    }

    private static WitherStyle Style(Inputs inputs) =>
        (inputs.Text("style") == "long" ? WitherStyle.Long : WitherStyle.Short) with { TargetMoistureWetBasis = inputs.Number("target") };

    private static WeatherReading[] Steady(Inputs inputs, int fromHour, int toHour)
    {
        double t = inputs.Number("t");
        double humidity = inputs.Has("rh")
            ? inputs.Number("rh")
            : AirState.FromWetBulb(t, t - inputs.Number("ambient_hd"), StandardAtmosphere.PressurePa(inputs.Number("z"))).RelativeHumidity;
        // A thermometer that did not move at all would be told as stuck.
        return [.. Enumerable.Range(fromHour, toHour - fromHour + 1).Select(hour => new WeatherReading(
            LoadedAt.AddHours(hour), DryBulbC: hour < 0 ? t + 0.01 * (hour & 1) : t, RelativeHumidity: humidity, RainMm: 0, WindMPerS: 2))];
    }
}
