using WitherAdvisor.Coefficients;
using WitherAdvisor.Leaf;

namespace WitherAdvisor.Recalibration.Fitting;

/// <summary>
/// One occasion about one point of the fit: its residuals and how they change, each divided by the standard deviations of
/// the measurements and of what is the batch's own, its leaf and its air.
/// </summary>
/// <remarks>
/// Errors in variables: C = R + B·V·Bᵀ with R the measurements' variances, V those of the batch's own moisture, surface water
/// and air, B how the answers change with them; residuals and slopes are multiplied by the inverse of C's Cholesky factor.
/// Answers and slopes are taken at the batch's own most likely leaf and air, found anew each time from the residuals of the
/// time before (Lindstrom and Bates 1990): about the mean leaf instead, a point of moisture either way would make every cuticle
/// seem 4 % thicker.
/// </remarks>
internal sealed class OccasionTerms
{
    /// <summary>Coordinates that an occasion's answers hang on: the site's, and two of its group.</summary>
    public const int Columns = FittedCoefficient.Count + FitModel.PerGroup;

    /// <summary>A batch's own leaf and air are sought no further than this many standard deviations off.</summary>
    private const double FarthestOwn = 3;

    private readonly Occasion occasion;
    private readonly double[] inputs = new double[BedInput.Count];
    private readonly double[] answers;
    private readonly double[] coarse;
    private readonly double[] moved;
    private readonly double[] byInput;
    private readonly double[] factor;
    private readonly double[] own = new double[BedInput.OwnCount];
    private readonly double[] ownNext = new double[BedInput.OwnCount];
    private readonly double[] ownDeviations = new double[BedInput.OwnCount];

    public OccasionTerms(Occasion occasion)
    {
        this.occasion = occasion;
        int count = Count;
        answers = new double[count];
        coarse = new double[count];
        moved = new double[count];
        byInput = new double[count * BedInput.Count];
        factor = new double[count * count];
        Residuals = new double[count];
        Slopes = new double[count * Columns];
    }

    public Occasion Occasion => occasion;

    /// <summary>Numbers found.</summary>
    public int Count => occasion.Observations.Length;

    /// <summary>Found less predicted, whitened.</summary>
    public double[] Residuals { get; }

    /// <summary>Change of the predicted, whitened; <see cref="Columns"/> for each residual.</summary>
    public double[] Slopes { get; }

    /// <summary>Sum of squared residuals.</summary>
    public double Distance { get; private set; }

    /// <summary>Residuals and slopes at a point.</summary>
    /// <param name="point">In the fit's coordinates.</param>
    /// <param name="holdBedSlopes">Whether the bed's own slopes are kept from the last time.</param>
    public void Linearise(FitPoint point, bool holdBedSlopes = false)
    {
        ownNext.CopyTo(own, 0);
        PredictedLeaf leaf = Answer(point);
        (ownDeviations[BedInput.Tissue], ownDeviations[BedInput.Surface], ownDeviations[BedInput.AirK]) =
            (leaf.TissueError, leaf.SurfaceError, occasion.AirErrorK);
        if (!holdBedSlopes)
        {
            ByInputs(point.Site);
        }

        Factorise();
        SlopesAt(point);
        Whiten(Residuals);
        Distance = SumOfSquares(Residuals);
        SeekOwn();
    }

    /// <summary>The squared distance at another point, measured as at the last one linearised.</summary>
    public double DistanceAt(FitPoint point)
    {
        Answer(point);
        Whiten(moved);
        return SumOfSquares(moved);
    }

    private PredictedLeaf Answer(FitPoint point)
    {
        PredictedLeaf told = PredictedLeaf.Of(occasion, point.Site, point.GroupMoisture(occasion.Group));
        PredictedLeaf leaf = told with { TissueShift = own[BedInput.Tissue], SurfaceShift = own[BedInput.Surface] };
        LeafState best = leaf.Best;
        own[BedInput.Tissue] = best.TissueMoistureWetBasis - leaf.Tissue;
        own[BedInput.Surface] = best.SurfaceWaterKgPerKg - leaf.Surface;
        BedInput.Fill(inputs, best, point.Site, point.GroupCuticle(occasion.Group));
        inputs[BedInput.AirK] = own[BedInput.AirK];
        BedAnswer.Predict(occasion, inputs, point.Site, BedAnswer.Fine, answers);
        for (int i = occasion.OfBed; i < Count; i++)
        {
            answers[i] = occasion.Observations[i].Kind == ObservationKind.LoadingSurface
                ? best.SurfaceWaterKgPerKg
                : best.TissueMoistureWetBasis;
        }

        return leaf;
    }

    private void ByInputs(WitherCoefficients set)
    {
        Array.Clear(byInput);
        BedAnswer.Predict(occasion, inputs, set, BedAnswer.Coarse, coarse);
        for (int input = 0; input < BedInput.Count; input++)
        {
            if (occasion.OfBed == 0 || IsIdle(input))
            {
                continue;
            }

            double held = inputs[input];
            double step = BedInput.Steps[input];
            inputs[input] = held + step;
            BedAnswer.Predict(occasion, inputs, set, BedAnswer.Coarse, moved);
            inputs[input] = held;
            for (int i = 0; i < occasion.OfBed; i++)
            {
                byInput[i * BedInput.Count + input] = (moved[i] - coarse[i]) / step;
            }
        }

        for (int i = occasion.OfBed; i < Count; i++)
        {
            bool ofSurface = occasion.Observations[i].Kind == ObservationKind.LoadingSurface;
            byInput[i * BedInput.Count + (ofSurface ? BedInput.Surface : BedInput.Tissue)] = 1;
        }
    }

    /// <summary>Leaf without water on it asks nothing of S_c, and leaf never turned nothing of β.</summary>
    private bool IsIdle(int input) =>
        (input == BedInput.SurfaceCapacity && inputs[BedInput.Surface] <= 0)
        || (input == BedInput.TurnBlend && occasion.TurnHours.Length == 0);

    private void Factorise()
    {
        for (int i = 0; i < Count; i++)
        {
            for (int j = 0; j <= i; j++)
            {
                double sum = i == j ? occasion.Observations[i].Error * occasion.Observations[i].Error : 0;
                for (int k = 0; k < BedInput.OwnCount; k++)
                {
                    sum += byInput[i * BedInput.Count + k] * byInput[j * BedInput.Count + k] * ownDeviations[k] * ownDeviations[k];
                }

                factor[i * Count + j] = sum;
            }
        }

        SmallCholesky.Factorise(factor, Count);
    }

    private void SlopesAt(FitPoint point)
    {
        IReadOnlyList<FittedCoefficient> site = point.Model.Site;
        Array.Clear(Slopes);
        for (int i = 0; i < Count; i++)
        {
            Span<double> slopes = Slopes.AsSpan(i * Columns, Columns);
            ReadOnlySpan<double> by = byInput.AsSpan(i * BedInput.Count, BedInput.Count);
            slopes[FittedCoefficient.Cuticle] = by[BedInput.Cuticle];
            slopes[FittedCoefficient.Film] = by[BedInput.Film];
            slopes[FittedCoefficient.SurfaceCapacity] = by[BedInput.SurfaceCapacity];
            slopes[FittedCoefficient.TurnBlend] = by[BedInput.TurnBlend];
            slopes[FittedCoefficient.Airflow] = by[BedInput.Airflow];
            slopes[FittedCoefficient.Count] = occasion.Group < 0 ? 0 : by[BedInput.Cuticle];
            slopes[FittedCoefficient.Count + 1] = occasion.Group < 0 ? 0 : by[BedInput.Tissue];
        }

        (double tissue, double surface, _, _) = PredictedLeaf.ByWeather(occasion, point.Site);
        for (int k = 0; k < FitPoint.OfLeaf.Length; k++)
        {
            (double tissueMoved, double surfaceMoved, _, _) = PredictedLeaf.ByWeather(occasion, point.MovedForLeaf[k]);
            double tissueSlope = (tissueMoved - tissue) / FitPoint.LeafStep;
            double surfaceSlope = (surfaceMoved - surface) / FitPoint.LeafStep;
            for (int i = 0; i < Count; i++)
            {
                Slopes[i * Columns + FitPoint.OfLeaf[k]] =
                    byInput[i * BedInput.Count + BedInput.Tissue] * tissueSlope
                    + byInput[i * BedInput.Count + BedInput.Surface] * surfaceSlope;
            }
        }

        for (int at = 0; at < FittedCoefficient.Count; at++)
        {
            double slope = site[at].Coordinate.Slope(point.Coordinates[at]);
            for (int i = 0; i < Count; i++)
            {
                Slopes[i * Columns + at] *= slope;
            }
        }

        SmallCholesky.Divide(factor, Count, Slopes, Columns);
    }

    private void Whiten(double[] residuals)
    {
        for (int i = 0; i < Count; i++)
        {
            double byOwn = 0;
            for (int k = 0; k < BedInput.OwnCount; k++)
            {
                byOwn += byInput[i * BedInput.Count + k] * own[k];
            }

            residuals[i] = occasion.Observations[i].Value - (answers[i] - byOwn);
        }

        SmallCholesky.Divide(factor, Count, residuals, 1);
    }

    /// <summary>The batch's own leaf and air that its residuals make most likely: V·Bᵀ·C⁻¹ times them.</summary>
    private void SeekOwn()
    {
        for (int k = 0; k < BedInput.OwnCount; k++)
        {
            for (int i = 0; i < Count; i++)
            {
                moved[i] = byInput[i * BedInput.Count + k];
            }

            SmallCholesky.Divide(factor, Count, moved, 1);
            double sum = 0;
            for (int i = 0; i < Count; i++)
            {
                sum += moved[i] * Residuals[i];
            }

            double farthest = FarthestOwn * ownDeviations[k];
            ownNext[k] = Math.Clamp(sum * ownDeviations[k] * ownDeviations[k], -farthest, farthest);
        }
    }

    private static double SumOfSquares(double[] values)
    {
        double sum = 0;
        foreach (double value in values)
        {
            sum += value * value;
        }

        return sum;
    }
}
