using MathNet.Numerics.LinearAlgebra;
using WitherAdvisor.Coefficients;
using WitherAdvisor.ReferenceChecks.SlowAir;

namespace WitherAdvisor.ReferenceChecks.SlowBed;

/// <summary>
/// Air blown up through leaf at an instant: dW/dz = M·j/G and dT/dz = −(λ/c)·dW/dz by Runge–Kutta of fourth order, two
/// gaps between nodes a step, so that its middle falls on a node.
/// </summary>
/// <remarks>Penman (1948) by leaf, wet fraction after Deardorff (1978), quasi-steady after Bakker-Arkema et al. (1974).</remarks>
public sealed class AirMarch(BedWither wither, int nodes)
{
    private readonly PlainAir air = new(wither.PressurePa, RealGas: true);
    private readonly WitherCoefficients leaf = wither.Coefficients;
    private readonly double surfaceCapacity = wither.Coefficients.SurfaceCapacityKgPerKg / (1 - wither.Leaf.TissueMoistureWetBasis);

    /// <summary>What each node loses, per s: −j_t of all nodes, then −j_s of all nodes.</summary>
    public Vector<double> RatesPerSecond(Vector<double> water)
    {
        double[] rates = new double[2 * nodes];
        double t = wither.PlenumC;
        double w = wither.HumidityRatio;
        double dryAir = wither.AirflowM3PerSM2 / air.SpecificVolume(t, w);
        double step = 2.0 / (nodes - 1);
        for (int i = 0; i < nodes - 1; i += 2)
        {
            (double t1, double w1) = Gradient(water, rates, i, t, w, dryAir);
            (double t2, double w2) = Gradient(water, rates, i + 1, t + step / 2 * t1, w + step / 2 * w1, dryAir);
            (double t3, double w3) = Gradient(water, rates, i + 1, t + step / 2 * t2, w + step / 2 * w2, dryAir);
            (double t4, double w4) = Gradient(water, rates, i + 2, t + step * t3, w + step * w3, dryAir);
            double tAbove = t + step / 6 * (t1 + 2 * t2 + 2 * t3 + t4);
            double wAbove = w + step / 6 * (w1 + 2 * w2 + 2 * w3 + w4);
            (double tEnd, double wEnd) = Gradient(water, rates, i + 2, tAbove, wAbove, dryAir);

            // Air at the node between by Hermite's cubic, as good as the march itself.
            Gradient(water, rates, i + 1, (t + tAbove) / 2 + step / 8 * (t1 - tEnd), (w + wAbove) / 2 + step / 8 * (w1 - wEnd), dryAir);
            t = tAbove;
            w = wAbove;
        }

        return Vector<double>.Build.Dense(rates);
    }

    /// <summary>dT/dz and dW/dz at a node in given air; the node's own losses are left in <paramref name="rates"/>.</summary>
    private (double T, double W) Gradient(Vector<double> water, double[] rates, int node, double t, double w, double dryAir)
    {
        double latent = 1000 * (2501 - 2.361 * t);
        double heat = 1006 + 1860 * w;
        double gamma = wither.PressurePa * heat / (0.621945 * latent);
        double slope = air.SaturatedPaPerK(t);
        double deficit = Math.Max(air.SaturatedPa(t) - air.VapourPa(w), 0);
        double density = 1 / air.SpecificVolume(t, w);
        double wet = Math.Pow(Math.Min(1, Math.Max(water[nodes + node], 0) / surfaceCapacity), 2.0 / 3.0);
        double skin = Math.Max(
            leaf.CuticularConductanceMPerS * (water[node] - leaf.EquilibriumMoistureDryBasis)
                / (leaf.ReferenceMoistureDryBasis - leaf.EquilibriumMoistureDryBasis), 1e-12);
        double evaporation = leaf.SpecificLeafAreaM2PerKgDry * density * heat * deficit * leaf.BoundaryLayerConductanceMPerS / latent;
        double fromSurface = wet * evaporation / (slope + gamma);
        double fromTissue = (1 - wet) * evaporation / (slope + gamma * (1 + leaf.BoundaryLayerConductanceMPerS / skin));
        rates[node] = -fromTissue;
        rates[nodes + node] = -fromSurface;
        double moistening = wither.DryMassKgPerM2 * (fromSurface + fromTissue) / dryAir;
        return (-latent / heat * moistening, moistening);
    }
}
