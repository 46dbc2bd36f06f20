using WitherAdvisor.Coefficients;

namespace WitherAdvisor.Recalibration.Fitting;

/// <summary>A point of the fit with what all occasions share at it.</summary>
internal sealed class FitPoint
{
    /// <summary>Step of an inner value for the derivatives of the leaf at loading.</summary>
    public const double LeafStep = 1e-4;

    /// <summary>Those that work through the leaf at loading.</summary>
    public static readonly int[] OfLeaf = [FittedCoefficient.Retention, FittedCoefficient.DroughtMoisture, FittedCoefficient.MoistureGain];

    public FitPoint(FitModel model, double[] coordinates)
    {
        Model = model;
        Coordinates = coordinates;
        Site = model.SiteAt(coordinates);
        MovedForLeaf = Array.ConvertAll(OfLeaf, at => model.Moved(Site, at, LeafStep));
    }

    public FitModel Model { get; }

    public double[] Coordinates { get; }

    public WitherCoefficients Site { get; }

    /// <summary>The site's set with each of <see cref="OfLeaf"/> moved by <see cref="LeafStep"/>.</summary>
    public WitherCoefficients[] MovedForLeaf { get; }

    public double GroupMoisture(int group) => group < 0 ? 0 : Coordinates[FitModel.PlaceOf(group) + 1];

    public double GroupCuticle(int group) => group < 0 ? 0 : Coordinates[FitModel.PlaceOf(group)];
}
