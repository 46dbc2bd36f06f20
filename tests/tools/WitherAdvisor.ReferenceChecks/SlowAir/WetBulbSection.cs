using System.Globalization;
using WitherAdvisor.Air;
using WitherAdvisor.ReferenceChecks.Cases;
using WitherAdvisor.ReferenceChecks.Report;

namespace WitherAdvisor.ReferenceChecks.SlowAir;

/// <summary>The wet bulb by halving an interval sixty times, beside ours, everywhere on a grid.</summary>
public static class WetBulbSection
{
    private const double HighestC = 50;
    private const double StepC = 0.5;
    private const double HighestElevationM = 2_500;

    private static readonly Tolerance Near = Tolerance.Of("absolute", 0.001, "what any reader of a thermometer could want; ours aims at 1e-9 K");

    private static readonly double[] Humidities =
        [0.01, 0.02, 0.05, .. Enumerable.Range(1, 18).Select(i => 0.05 * i + 0.05), 0.97, 0.98, 0.99, 1];

    public static Section Run() => new(
        "Moist air: wet bulb by halving, −5 to 50 °C, 1 to 100 %, 0 to 2,500 m",
        "Both formulations; the second solver is `SlowAir/PlainAir.cs`, written apart from the library. Where a wick of water and one of ice would both do, both solvers take water.",
        [.. Grid()]);

    private static IEnumerable<CheckRow> Grid()
    {
        foreach (bool realGas in new[] { true, false })
        {
            for (double z = 0; z <= HighestElevationM; z += 500)
            {
                var plain = new PlainAir(StandardAtmosphere.PressurePa(z), realGas);
                for (double t = -5; t <= HighestC; t += StepC)
                {
                    foreach (double rh in Humidities)
                    {
                        yield return Row(plain, z, t, rh);
                    }
                }
            }
        }
    }

    private static CheckRow Row(PlainAir plain, double z, double t, double rh)
    {
        double humidityRatio = plain.HumidityRatio(rh * plain.SaturatedPa(t));
        var ours = new AirState(t, humidityRatio, plain.PressurePa, plain.RealGas ? MoistAirFormulation.RealGas : MoistAirFormulation.IdealGas);
        return new(
            plain.RealGas ? "wet_bulb_c_real_gas" : "wet_bulb_c_ideal_gas",
            string.Create(CultureInfo.InvariantCulture, $"z={z};t={t};rh={rh:0.##}"),
            "SlowAir/PlainAir.cs", ours.WetBulbC, plain.WetBulbC(t, humidityRatio), Near);
    }
}
