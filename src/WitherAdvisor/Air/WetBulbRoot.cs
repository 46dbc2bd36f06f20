using WitherAdvisor.Numerics;

namespace WitherAdvisor.Air;

/// <summary>Solves the psychrometric equation for the wet bulb.</summary>
internal static class WetBulbRoot
{
    private const double ToleranceK = 1e-9;

    /// <summary>The wet bulb in °C at which an excess of humidity ratio is zero, or the nearer bound.</summary>
    /// <param name="excessHumidityRatio">Increases with wet bulb over water, and over ice.</param>
    /// <remarks>
    /// The equations over water and over ice do not meet at the triple point, so that within some tenths of a
    /// kelvin of it both have a root. The wick is then taken to be still liquid: the root over water wins.
    /// </remarks>
    public static double FindC(Func<double, double> excessHumidityRatio, double lowestC, double highestC)
    {
        double freezingC = Saturation.TriplePointC;
        bool liquid = lowestC >= freezingC || (highestC >= freezingC && excessHumidityRatio(freezingC) <= 0);
        return liquid
            ? BracketedRoot.Find(excessHumidityRatio, Math.Max(lowestC, freezingC), highestC, ToleranceK)
            : BracketedRoot.Find(excessHumidityRatio, lowestC, Math.Min(highestC, Math.BitDecrement(freezingC)), ToleranceK);
    }
}
