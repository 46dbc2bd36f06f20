using MathNet.Numerics.LinearAlgebra;

namespace WitherAdvisor.Recalibration.Fitting;

/// <summary>The sums of a linearised fit, taken in the occasions' order, so that they are the same however many threads made the terms.</summary>
/// <param name="Curvature">Of half the negative log posterior.</param>
/// <param name="Pull">Its negative gradient.</param>
internal sealed record NormalEquations(Matrix<double> Curvature, Vector<double> Pull)
{
    public static NormalEquations Of(FitPoint point, OccasionTerms[] terms, GrossErrors errors)
    {
        int count = point.Model.Count;
        var curvature = new double[count * count];
        var pull = new double[count];
        Span<int> places = stackalloc int[OccasionTerms.Columns];
        for (int i = 0; i < FittedCoefficient.Count; i++)
        {
            places[i] = i;
        }

        for (int row = 0; row < terms.Length; row++)
        {
            int group = terms[row].Occasion.Group;
            int columns = group < 0 ? FittedCoefficient.Count : OccasionTerms.Columns;
            for (int k = FittedCoefficient.Count; k < columns; k++)
            {
                places[k] = FitModel.PlaceOf(group) + k - FittedCoefficient.Count;
            }

            Add(terms[row], errors.Weights[row] / errors.Scale, places[..columns], curvature, pull, count);
        }

        for (int i = 0; i < count; i++)
        {
            double precision = 1 / (point.Model.Spread(i) * point.Model.Spread(i));
            curvature[i * count + i] += precision;
            pull[i] -= precision * point.Coordinates[i];
        }

        return new(Matrix<double>.Build.Dense(count, count, curvature), Vector<double>.Build.Dense(pull));
    }

    private static void Add(
        OccasionTerms terms, double weight, ReadOnlySpan<int> places, double[] curvature, double[] pull, int count)
    {
        for (int i = 0; i < terms.Count; i++)
        {
            ReadOnlySpan<double> slopes = terms.Slopes.AsSpan(i * OccasionTerms.Columns, OccasionTerms.Columns);
            for (int a = 0; a < places.Length; a++)
            {
                double weighted = weight * slopes[a];
                pull[places[a]] += weighted * terms.Residuals[i];
                for (int b = 0; b < places.Length; b++)
                {
                    curvature[places[a] * count + places[b]] += weighted * slopes[b];
                }
            }
        }
    }
}
