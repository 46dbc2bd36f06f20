using BenchmarkDotNet.Attributes;
using WitherAdvisor.Air;

namespace WitherAdvisor.Benchmarks;

/// <summary>The solved states of moist air, beside one saturation pressure, which each of their steps takes.</summary>
public class MoistAirBenchmarks
{
    private readonly AirState ambient = AirState.FromRelativeHumidity(19, 0.82, StandardAtmosphere.PressurePa(1_500));

    [Benchmark(Baseline = true)]
    public double SaturationPressure() => Saturation.VapourPressurePa(ambient.DryBulbC, ambient.PressurePa, ambient.Formulation);

    [Benchmark]
    public double WetBulb() => ambient.WetBulbC;

    [Benchmark]
    public AirState PlenumForHygrometricDifference() => HotAirMix.PlenumForHygrometricDifference(ambient, 7.2);
}
