namespace WitherAdvisor.Numerics;

/// <summary>
/// Standard normal draws in seven dimensions without randomness: a lattice that fills the cube evenly, bent by the
/// inverse of the normal distribution. The same numbers always.
/// </summary>
/// <remarks>
/// Kronecker sequence with the powers of the root of x⁸ = x + 1 (Roberts 2018, "The unreasonable effectiveness of
/// quasirandom sequences"); inverse normal by Acklam's rational approximation, within 1.2e-9 relative (from memory).
/// </remarks>
internal static class NormalLattice
{
    public const int Dimensions = 7;

    /// <summary>The root of x⁸ = x + 1.</summary>
    private const double Root = 1.0969815577985598;

    private static readonly double[] CentralTop =
        [-3.969683028665376e+01, 2.209460984245205e+02, -2.759285104469687e+02, 1.383577518672690e+02, -3.066479806614716e+01, 2.506628277459239];

    private static readonly double[] CentralBottom =
        [-5.447609879822406e+01, 1.615858368580409e+02, -1.556989798598866e+02, 6.680131188771972e+01, -1.328068155288572e+01, 1];

    private static readonly double[] TailTop =
        [-7.784894002430293e-03, -3.223964580411365e-01, -2.400758277161838, -2.549732539343734, 4.374664141464968, 2.938163982698783];

    private static readonly double[] TailBottom =
        [7.784695709041462e-03, 3.224671290700398e-01, 2.445134137142996, 3.754408661907416, 1];

    /// <summary>Pairs of draws of <see cref="Dimensions"/> numbers each, one the mirror of the other, so that none leans to a side.</summary>
    public static IEnumerable<double[]> MirroredDraws(int pairs)
    {
        for (int i = 1; i <= pairs; i++)
        {
            var draw = new double[Dimensions];
            double power = 1;
            for (int d = 0; d < Dimensions; d++)
            {
                power /= Root;
                double place = 0.5 + i * power;
                draw[d] = InverseNormal(place - Math.Floor(place));
            }

            yield return draw;
            yield return Array.ConvertAll(draw, deviate => -deviate);
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
