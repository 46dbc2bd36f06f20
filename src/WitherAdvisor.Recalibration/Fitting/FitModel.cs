using WitherAdvisor.Coefficients;

namespace WitherAdvisor.Recalibration.Fitting;

/// <summary>What is fitted: the site's coefficients, and for each group of leaf two offsets from them.</summary>
internal sealed class FitModel(RecalibrationSettings settings, LeafGroup[] groups)
{
    /// <summary>Offsets of a group: logarithm of g_0, and moisture at loading (wet basis).</summary>
    public const int PerGroup = 2;

    private readonly FittedCoefficient[] site = FittedCoefficient.About(settings.Prior);

    // What the site's coefficients leave open is fitted; what is left is the batch's own.
    private readonly WitherCoefficients unlearned = settings.Prior with
    {
        Spreads = settings.Prior.Spreads with { SurfaceRetention = 0, DroughtMoistureWetBasis = 0 },
    };

    public IReadOnlyList<LeafGroup> Groups => groups;

    public IReadOnlyList<FittedCoefficient> Site => site;

    /// <summary>Length of a point.</summary>
    public int Count => FittedCoefficient.Count + PerGroup * groups.Length;

    /// <summary>Prior standard deviation of a coordinate.</summary>
    public double Spread(int at) => at < FittedCoefficient.Count
        ? site[at].Spread
        : (at - FittedCoefficient.Count) % PerGroup == 0 ? settings.Groups.CuticularConductance : settings.Groups.MoistureWetBasis;

    /// <summary>Place of a group's first coordinate.</summary>
    public static int PlaceOf(int group) => FittedCoefficient.Count + PerGroup * group;

    /// <summary>The site's coefficients at a point, with no spread for those that are fitted.</summary>
    public WitherCoefficients SiteAt(ReadOnlySpan<double> point)
    {
        WitherCoefficients set = unlearned;
        for (int i = 0; i < site.Length; i++)
        {
            set = site[i].Coefficient.With(set, site[i].Coordinate.ValueAt(point[i]));
        }

        return set;
    }

    /// <summary>The same with the inner value of one of them moved.</summary>
    public WitherCoefficients Moved(WitherCoefficients set, int at, double step)
    {
        FittedCoefficient one = site[at];
        return one.Coefficient.With(set, one.Coordinate.Value(one.Coordinate.Inner(one.Coefficient.Of(set)) + step));
    }
}
