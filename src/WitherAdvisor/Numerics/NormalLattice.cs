namespace WitherAdvisor.Numerics;

/// <summary>
/// Standard normal draws in seven dimensions without randomness: a lattice that fills the cube evenly, bent by the
/// inverse of the normal distribution. The same numbers always.
/// </summary>
/// <remarks>
/// Rank-1 lattice (Korobov 1959) of 49 points. Its middle point is no draw at all; the other 48 are mirror images of
/// one another, so that none leans to a side. In any two dimensions each square of a board of 7 by 7 holds one point
/// (a Latin hypercube on an orthogonal array: Tang 1993), so that no two dimensions run together.
/// Inverse normal by Acklam's rational approximation, within 1.2e-9 relative (from memory).
/// </remarks>
internal static class NormalLattice
{
    public const int Dimensions = 7;

    /// <summary>Draws, half of them the mirror images of the other half.</summary>
    public const int Count = Points - 1;

    private const int Points = Dimensions * Dimensions;

    private static readonly double[] CentralTop =
        [-3.969683028665376e+01, 2.209460984245205e+02, -2.759285104469687e+02, 1.383577518672690e+02, -3.066479806614716e+01, 2.506628277459239];

    private static readonly double[] CentralBottom =
        [-5.447609879822406e+01, 1.615858368580409e+02, -1.556989798598866e+02, 6.680131188771972e+01, -1.328068155288572e+01, 1];

    private static readonly double[] TailTop =
        [-7.784894002430293e-03, -3.223964580411365e-01, -2.400758277161838, -2.549732539343734, 4.374664141464968, 2.938163982698783];

    private static readonly double[] TailBottom =
        [7.784695709041462e-03, 3.224671290700398e-01, 2.445134137142996, 3.754408661907416, 1];

    /// <summary>All draws, of <see cref="Dimensions"/> numbers each.</summary>
    public static IEnumerable<double[]> Draws()
    {
        for (int point = 1; point <= Count; point++)
        {
            var draw = new double[Dimensions];
            for (int d = 0; d < Dimensions; d++)
            {
                double place = 0.5 + (double)(point * (1 + Dimensions * d) % Points) / Points;
                draw[d] = InverseNormal(place - Math.Floor(place));
            }

            yield return draw;
        }
    }

    /// <summary>The standard normal deviate below which a share (0 to 1) of cases lie.</summary>
    public static double InverseNormal(double share)
    {
        const double Tail = 0.02425;
        if (share < Tail)
        {
            return OfTail(Math.Sqrt(-2 * Math.Log(share)));
        }

        if (share > 1 - Tail)
        {
            return -OfTail(Math.Sqrt(-2 * Math.Log(1 - share)));
        }

        double q = share - 0.5;
        return q * Polynomial(CentralTop, q * q) / Polynomial(CentralBottom, q * q);
    }

    private static double OfTail(double q) => Polynomial(TailTop, q) / Polynomial(TailBottom, q);

    private static double Polynomial(double[] coefficients, double x)
    {
        double sum = 0;
        foreach (double coefficient in coefficients)
        {
            sum = sum * x + coefficient;
        }

        return sum;
    }
}
