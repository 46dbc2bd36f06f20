using WitherAdvisor.Readings.Hourly;

namespace WitherAdvisor.Spells;

/// <summary>Rain over a stretch, mm, and the share of its hours that it is known of, 0 to 1.</summary>
internal readonly record struct RainSum(double FallenMm, double KnownShare)
{
    private const double LeastKnownShare = 0.7;

    /// <summary>The sum where enough of the stretch is known to call it one; null otherwise.</summary>
    public double? Mm => KnownShare >= LeastKnownShare ? FallenMm : null;

    /// <summary>At least so much fell, whatever the unknown hours brought.</summary>
    public bool IsAtLeast(double mm) => FallenMm >= mm;

    /// <summary>Enough is known to say that less fell.</summary>
    public bool IsBelow(double mm) => Mm < mm;

    /// <summary>Of so many hours up to an instant; hours before the history are unknown.</summary>
    public static RainSum UpTo(HourlyRain rain, int instant, int hours)
    {
        double fallenMm = 0;
        double known = 0;
        for (int hour = Math.Max(instant - hours + 1, 1); hour <= instant; hour++)
        {
            fallenMm += rain.ObservedMm[hour] + rain.StatedMm[hour];
            known += rain.Known[hour];
        }

        return new(fallenMm, known / hours);
    }
}
