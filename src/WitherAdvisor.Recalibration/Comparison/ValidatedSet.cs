using WitherAdvisor.Bed;
using WitherAdvisor.Coefficients;
using WitherAdvisor.Leaf;
using WitherAdvisor.Recalibration.Fitting;

namespace WitherAdvisor.Recalibration.Comparison;

/// <summary>A set of coefficients asked for withers that have been.</summary>
/// <param name="set">The site's.</param>
/// <param name="groupOffsets">By place of the group; empty where the site's set stands for all leaf.</param>
internal sealed class ValidatedSet(WitherCoefficients set, IReadOnlyList<(double Cuticle, double Moisture)> groupOffsets)
{
    /// <summary>A set that calls leaf not ready after so many times the true hours is given this.</summary>
    private const double MostTimesTheHours = 3;

    private readonly WitherCoefficients bare = set with
    {
        Spreads = set.Spreads with { SurfaceRetention = 0, DroughtMoistureWetBasis = 0 },
    };

    /// <summary>Hour at which the leaf would have been as it was found: by its weight, or by its moisture where nobody weighed it.</summary>
    public double? ReadyHour(Occasion occasion)
    {
        double[] inputs = Inputs(occasion);
        double dryShare = new LeafState(inputs[BedInput.Tissue], inputs[BedInput.Surface]).DryMatterKg(1);
        double? water = Found(occasion, ObservationKind.Outturn) is { } logOutturn
            ? Math.Exp(logOutturn) / dryShare - 1
            : Found(occasion, ObservationKind.FinalMoisture) is { } moisture ? Leaf.Moisture.DryBasis(moisture) : null;
        double horizon = MostTimesTheHours * occasion.Wither.HoursOnTrough;
        return water is { } asFound
            ? BedAnswer.Load(occasion, inputs, bare, BedAnswer.Fine).RunToWater(asFound, horizon) ?? horizon
            : null;
    }

    /// <summary>Moisture at unloading, wet basis; null where nobody oven-dried a sample.</summary>
    public double? FinalMoisture(Occasion occasion)
    {
        if (Found(occasion, ObservationKind.FinalMoisture) is null)
        {
            return null;
        }

        GivenWither bed = BedAnswer.Load(occasion, Inputs(occasion), bare, BedAnswer.Fine);
        bed.RunTo(occasion.Wither.HoursOnTrough);
        return Leaf.Moisture.WetBasis(bed.WaterDryBasis);
    }

    public static double? Found(Occasion occasion, ObservationKind kind)
    {
        foreach (Observation one in occasion.Observations)
        {
            if (one.Kind == kind)
            {
                return one.Value;
            }
        }

        return null;
    }

    private double[] Inputs(Occasion occasion)
    {
        (double cuticle, double moisture) = occasion.Group >= 0 && occasion.Group < groupOffsets.Count ? groupOffsets[occasion.Group] : (0, 0);
        var inputs = new double[BedInput.Count];
        BedInput.Fill(inputs, PredictedLeaf.Of(occasion, bare, moisture).Best, bare, cuticle);
        return inputs;
    }
}
