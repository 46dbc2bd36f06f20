using WitherAdvisor.Bed;
using WitherAdvisor.Coefficients;
using WitherAdvisor.Leaf;

namespace WitherAdvisor.Recalibration.Fitting;

/// <summary>What a bed makes of its inputs: the numbers that were found of it.</summary>
internal static class BedAnswer
{
    /// <summary>For the answers themselves.</summary>
    public static BedResolution Fine { get; } = BedResolution.Search;

    /// <summary>
    /// For how they change: a coarse bed changes as a fine one does, and a derivative a little off costs a step
    /// more, not another result.
    /// </summary>
    public static BedResolution Coarse { get; } = new(4, 2400);

    /// <summary>The bed at loading.</summary>
    /// <param name="inputs">By <see cref="BedInput"/>.</param>
    /// <param name="unlearned">Gives the coefficients that are not fitted.</param>
    public static GivenWither Load(
        Occasion occasion, ReadOnlySpan<double> inputs, WitherCoefficients unlearned, BedResolution cut)
    {
        ObservedWither wither = occasion.Wither;
        var leaf = new LeafState(inputs[BedInput.Tissue], inputs[BedInput.Surface]);
        var setup = new BedSetup(
            leaf,
            leaf.DryMatterKg(wither.GreenWeightKg) / wither.AreaM2,
            wither.AirflowM3PerSM2 * Math.Exp(inputs[BedInput.Airflow]),
            wither.PressurePa,
            occasion.Saturation,
            unlearned with
            {
                CuticularConductanceMPerS = Math.Exp(inputs[BedInput.Cuticle]),
                BoundaryLayerConductanceMPerS = Math.Exp(inputs[BedInput.Film]),
                SurfaceCapacityKgPerKg = Math.Exp(inputs[BedInput.SurfaceCapacity]),
                TurnBlend = inputs[BedInput.TurnBlend],
            },
            cut.Layers,
            cut.LongestStepS);
        return new(setup, occasion.AirWarmer(inputs[BedInput.AirK]), occasion.TurnHours);
    }

    /// <summary>Fills in what the bed says of each of its observations.</summary>
    public static void Predict(
        Occasion occasion, ReadOnlySpan<double> inputs, WitherCoefficients unlearned, BedResolution cut, Span<double> answers)
    {
        GivenWither bed = Load(occasion, inputs, unlearned, cut);
        double start = 1 + bed.WaterDryBasis;
        double dryShare = new LeafState(inputs[BedInput.Tissue], inputs[BedInput.Surface]).DryMatterKg(1);
        for (int i = 0; i < occasion.OfBed; i++)
        {
            Observation asked = occasion.Observations[i];
            bed.RunTo(asked.Hour);
            answers[i] = asked.Kind switch
            {
                ObservationKind.SampleShare => (1 + bed.WaterDryBasis) / start,
                ObservationKind.Outturn => Math.Log(dryShare * (1 + bed.WaterDryBasis)),
                ObservationKind.FinalMoisture => Moisture.WetBasis(bed.WaterDryBasis),
                _ => TopOverBottom(bed.Bed),
            };
        }
    }

    private static double TopOverBottom(LeafBed bed)
    {
        (double bottom, _, double top) = bed.TissueByHeightWetBasis();
        return top - bottom;
    }
}
