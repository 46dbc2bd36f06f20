using WitherAdvisor.Leaf;

namespace WitherAdvisor.Bed;

/// <summary>
/// A bed of leaf with air blown up through it: water in the leaf and on the leaf by layer, from the mesh (0) to the top.
/// </summary>
/// <remarks>
/// Each layer of leaf loses water by the Penman combination equation without radiation; the air is marched through
/// the layers at each instant, its own storage and the leaf's heat storage neglected (Bakker-Arkema et al. 1974;
/// Brooker, Bakker-Arkema and Hall 1992). The wet fraction of a leaf is that of Deardorff (1978).
/// Heun's method in time; within a layer the vapour-pressure deficit falls exponentially with the coefficients
/// of mid-layer, so few layers do. What the leaf loses the air gains, to rounding.
/// </remarks>
public sealed class LeafBed
{
    private readonly BedSetup setup;
    private readonly LayerRates start;
    private readonly LayerRates end;
    private readonly double[] tissue;
    private readonly double[] surface;
    private readonly double[] tissueAhead;
    private readonly double[] surfaceAhead;
    private readonly LayerExchange exchange;
    private double[]? fresh;

    public LeafBed(BedSetup setup)
    {
        this.setup = setup;
        exchange = new(setup);
        start = new(setup.Layers);
        end = new(setup.Layers);
        tissue = new double[setup.Layers];
        surface = new double[setup.Layers];
        tissueAhead = new double[setup.Layers];
        surfaceAhead = new double[setup.Layers];
        BedState.CutInto(tissue, setup.Start.TissueDryBasis);
        BedState.CutInto(surface, setup.Start.SurfaceDryBasis);
        (Loaded, DryMassKgPerM2) = (setup.Leaf, setup.DryMassKgPerM2);
        if (setup.Start.FreshDryBasis is { } loaded)
        {
            fresh = new double[setup.Layers];
            BedState.CutInto(fresh, loaded);
            exchange.Hold(DryMassKgPerM2, fresh);
        }
    }

    /// <summary>The leaf as it was loaded; the mean where it came in lots.</summary>
    public LeafState Loaded { get; private set; }

    /// <summary>Dry matter per area of all that lies on the trough, kg/m².</summary>
    public double DryMassKgPerM2 { get; private set; }

    /// <summary>Water in the leaf by layer from the mesh up, kg per kg dry matter.</summary>
    public ReadOnlySpan<double> TissueDryBasis => tissue;

    /// <summary>Water on the leaf by layer from the mesh up, kg per kg dry matter.</summary>
    public ReadOnlySpan<double> SurfaceDryBasis => surface;

    /// <summary>Mean water in the leaf, kg per kg dry matter.</summary>
    public double MeanTissueDryBasis => Mean(tissue);

    /// <summary>Mean water on the leaf, kg per kg dry matter.</summary>
    public double MeanSurfaceDryBasis => Mean(surface);

    /// <summary>Mean water in and on the leaf, kg per kg dry matter.</summary>
    public double MeanWaterDryBasis => MeanTissueDryBasis + MeanSurfaceDryBasis;

    /// <summary>Air leaving the top over the last step, °C.</summary>
    public double ExhaustC { get; private set; }

    /// <summary>Humidity ratio of the air leaving the top, mean over the last step, kg per kg dry air.</summary>
    public double ExhaustHumidityRatio { get; private set; }

    /// <summary>Mean flow of dry air over the last step, kg/s·m².</summary>
    public double DryAirKgPerSM2 { get; private set; }

    /// <summary>Least water on the leaf of any layer, kg per kg dry matter.</summary>
    public double LeastSurfaceDryBasis => surface.Min();

    /// <summary>Temperature of the leaf by layer from the mesh up under an air, °C; of its dry part where some is wet, for that is the warmer.</summary>
    public IReadOnlyList<double> LeafTemperaturesC(InletAir air)
    {
        var rates = new LayerRates(setup.Layers, leafTemperatures: true);
        exchange.March(air, tissue, surface, setup.LongestStepS, rates);
        return rates.LeafC!;
    }

    /// <summary>Dries for a time in s, the plenum air changing evenly from one state to another.</summary>
    public void Step(double seconds, InletAir from, InletAir to)
    {
        exchange.March(from, tissue, surface, seconds, start);
        for (int i = 0; i < tissue.Length; i++)
        {
            tissueAhead[i] = tissue[i] - seconds * start.Tissue[i];
            surfaceAhead[i] = surface[i] - seconds * start.Surface[i];
        }

        exchange.March(to, tissueAhead, surfaceAhead, seconds, end);
        for (int i = 0; i < tissue.Length; i++)
        {
            tissue[i] -= seconds / 2 * (start.Tissue[i] + end.Tissue[i]);
            surface[i] -= seconds / 2 * (start.Surface[i] + end.Surface[i]);
        }

        DryAirKgPerSM2 = (start.DryAirKgPerSM2 + end.DryAirKgPerSM2) / 2;
        ExhaustHumidityRatio = (start.DryAirKgPerSM2 * start.ExhaustHumidityRatio
            + end.DryAirKgPerSM2 * end.ExhaustHumidityRatio) / (2 * DryAirKgPerSM2);
        ExhaustC = end.ExhaustC;
    }

    /// <summary>The bed as it stands, at an hour that its owner keeps.</summary>
    public BedState StateAt(double hour) => new(Loaded, hour, [.. tissue], [.. surface]) { FreshDryBasis = fresh is null ? null : [.. fresh] };

    /// <summary>Lays leaf on top. The bed is cut anew into as many layers of equal dry mass; no water is lost or gained.</summary>
    public void Lay(LaidLot lot)
    {
        if (fresh is null)
        {
            fresh = new double[tissue.Length];
            Array.Fill(fresh, Moisture.DryBasis(Loaded.TissueMoistureWetBasis));
        }

        BedState laid = BedState.AtLoading(lot.Leaf);
        double lyingShare = DryMassKgPerM2 / (DryMassKgPerM2 + lot.DryMassKgPerM2);
        LayerCut.LayOn(tissue, lyingShare, laid.TissueDryBasis[0]);
        LayerCut.LayOn(surface, lyingShare, laid.SurfaceDryBasis[0]);
        LayerCut.LayOn(fresh, lyingShare, laid.TissueDryBasis[0]);
        Loaded = MixedLeaf.Of(Loaded, DryMassKgPerM2, [lot]);
        DryMassKgPerM2 += lot.DryMassKgPerM2;
        exchange.Hold(DryMassKgPerM2, fresh);
    }

    /// <summary>Turns the leaf: what was on top comes to the mesh, and the bed is blended toward its mean.</summary>
    public void Turn()
    {
        TurnOver(tissue);
        TurnOver(surface);
        if (fresh is not null)
        {
            TurnOver(fresh);
            exchange.Hold(DryMassKgPerM2, fresh);
        }
    }

    /// <summary>Largest minus smallest tissue moisture over the height of the bed, wet basis.</summary>
    public double TissueSpreadWetBasis()
    {
        double low = Math.Min(AtMesh(tissue), AtTop(tissue));
        double high = Math.Max(AtMesh(tissue), AtTop(tissue));
        foreach (double x in tissue)
        {
            low = Math.Min(low, x);
            high = Math.Max(high, x);
        }

        return Moisture.WetBasis(high) - Moisture.WetBasis(low);
    }

    /// <summary>Tissue moisture at the mesh, in the middle and on top, wet basis.</summary>
    public (double Bottom, double Middle, double Top) TissueByHeightWetBasis()
    {
        int half = tissue.Length / 2;
        double middle = tissue.Length % 2 == 1 ? tissue[half] : (tissue[half - 1] + tissue[half]) / 2;
        return (Moisture.WetBasis(AtMesh(tissue)), Moisture.WetBasis(middle), Moisture.WetBasis(AtTop(tissue)));
    }

    /// <summary>Layers hold their means; the faces of the bed lie half a layer beyond the outer two.</summary>
    private static double AtMesh(double[] profile) =>
        profile.Length == 1 ? profile[0] : Math.Max(1.5 * profile[0] - 0.5 * profile[1], 0);

    private static double AtTop(double[] profile) =>
        profile.Length == 1 ? profile[0] : Math.Max(1.5 * profile[^1] - 0.5 * profile[^2], 0);

    private static double Mean(double[] values)
    {
        double sum = 0;
        foreach (double value in values)
        {
            sum += value;
        }

        return sum / values.Length;
    }

    private void TurnOver(double[] profile)
    {
        double mean = Mean(profile);
        double blend = setup.Coefficients.TurnBlend;
        Array.Reverse(profile);
        for (int i = 0; i < profile.Length; i++)
        {
            profile[i] = (1 - blend) * profile[i] + blend * mean;
        }
    }
}
