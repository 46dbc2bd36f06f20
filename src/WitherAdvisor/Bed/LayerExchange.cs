using WitherAdvisor.Air;

namespace WitherAdvisor.Bed;

/// <summary>Marches air up through the layers of a bed at one instant.</summary>
internal sealed class LayerExchange
{
    /// <summary>Share of the surface capacity under which no water counts as standing on the leaf.</summary>
    private const double Nothing = 1e-9;

    private readonly SaturationTable saturation;
    private readonly double pressurePa;
    private readonly double airflowM3PerSM2;
    private readonly double surfaceCapacityKgPerKg;
    private readonly double[] surfaceCapacityInverse;
    private double layerMassKgPerM2;
    private readonly double leafAreaTimesFilm;
    private readonly double filmOverCuticle;
    private readonly double referenceAboveEquilibrium;
    private readonly double equilibrium;

    public LayerExchange(BedSetup setup)
    {
        var c = setup.Coefficients;
        saturation = setup.Saturation;
        pressurePa = setup.PressurePa;
        airflowM3PerSM2 = setup.AirflowM3PerSM2;
        layerMassKgPerM2 = setup.DryMassKgPerM2 / setup.Layers;
        leafAreaTimesFilm = c.SpecificLeafAreaM2PerKgDry * c.BoundaryLayerConductanceMPerS;
        filmOverCuticle = c.BoundaryLayerConductanceMPerS / c.CuticularConductanceMPerS;
        equilibrium = c.EquilibriumMoistureDryBasis;
        referenceAboveEquilibrium = c.ReferenceMoistureDryBasis - equilibrium;
        surfaceCapacityKgPerKg = c.SurfaceCapacityKgPerKg;
        surfaceCapacityInverse = new double[setup.Layers];
        Array.Fill(surfaceCapacityInverse, (1 - setup.Leaf.TissueMoistureWetBasis) / surfaceCapacityKgPerKg);
    }

    /// <summary>Goes on with another bed: its dry mass, and by layer the water in its leaf as loaded, kg per kg dry matter.</summary>
    public void Hold(double dryMassKgPerM2, double[] freshDryBasis)
    {
        layerMassKgPerM2 = dryMassKgPerM2 / freshDryBasis.Length;
        for (int i = 0; i < freshDryBasis.Length; i++)
        {
            surfaceCapacityInverse[i] = 1 / (surfaceCapacityKgPerKg * (1 + freshDryBasis[i]));
        }
    }

    /// <summary>Rates of all layers for the given plenum air and water contents (kg per kg dry matter).</summary>
    public void March(InletAir inlet, double[] tissue, double[] surface, double seconds, LayerRates rates)
    {
        double t = inlet.DryBulbC;
        double w = inlet.HumidityRatio;
        double dryAir = airflowM3PerSM2 * inlet.FlowShare / MoistAir.SpecificVolumeM3PerKg(t, w, pressurePa);
        double massOverAir = layerMassKgPerM2 / dryAir;
        double deficit = Math.Max(saturation.PressurePa(t) - pressurePa * w / (MoistAir.MolarMassRatio + w), 0);
        // Coefficients are taken in the middle of a layer, guessed from what the layer below gave; the first has none below.
        LayerDrying drying = Drying(t, w, tissue[0], surface[0] * surfaceCapacityInverse[0]);
        double guess = massOverAir * drying.PerDeficit * deficit;
        for (int i = 0; i < tissue.Length; i++)
        {
            drying = Drying(t - drying.LatentOverHeat * guess / 2, w + guess / 2, tissue[i], surface[i] * surfaceCapacityInverse[i]);
            double meanDeficit = drying.MeanDeficit(deficit, massOverAir);

            // No layer can lose more water than stands on it.
            double fromSurface = Math.Min(drying.SurfacePerDeficit * meanDeficit, surface[i] / seconds);
            double fromTissue = drying.TissuePerDeficit * meanDeficit;
            double gain = massOverAir * (fromSurface + fromTissue);
            if (rates.LeafC is { } leafC)
            {
                leafC[i] = t - drying.LatentOverHeat * gain / 2 - drying.LeafBelowAirPerDeficit * meanDeficit;
            }

            deficit = Math.Max(deficit - drying.DeficitPerGain * gain, 0);
            t -= drying.LatentOverHeat * gain;
            w += gain;
            guess = gain;
            rates.Tissue[i] = fromTissue * inlet.RunShare;
            rates.Surface[i] = fromSurface * inlet.RunShare;
        }

        rates.ExhaustC = t;
        rates.ExhaustHumidityRatio = w;
        rates.DryAirKgPerSM2 = dryAir * inlet.RunShare;
    }

    private LayerDrying Drying(double t, double w, double tissueDryBasis, double shareOfCapacity) => new(
        leafAreaTimesFilm, WetFraction(shareOfCapacity), CuticularResistance(tissueDryBasis), t, w, saturation.SlopePaPerK(t), pressurePa);

    /// <summary>Deardorff (1978), J. Geophys. Res. 83: wet share of leaf from the water on it.</summary>
    private static double WetFraction(double shareOfCapacity) =>
        shareOfCapacity >= 1 ? 1 : shareOfCapacity <= Nothing ? 0 : Math.Cbrt(shareOfCapacity * shareOfCapacity);

    /// <summary>g_b/g_l: how much the cuticle holds back beside the air film; endless where the leaf has no water to give.</summary>
    private double CuticularResistance(double tissueDryBasis)
    {
        double above = tissueDryBasis - equilibrium;
        return above <= 0 ? double.PositiveInfinity : filmOverCuticle * referenceAboveEquilibrium / above;
    }
}
