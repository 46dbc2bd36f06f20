using WitherAdvisor.Coefficients;
using WitherAdvisor.Evaporation;
using WitherAdvisor.LeafAtLoading;

namespace WitherAdvisor.Review;

/// <summary>Reviews hours.</summary>
internal static class ReviewedHours
{
    private const int HoursInDay = 24;

    public static IEnumerable<ReviewHour> Of(
        LeafHistory history, KnownHours hours, int first, int last, DateTimeOffset now, WitherCoefficients coefficients)
    {
        double[] carried = CarriedWater.IfPluckedAt(history, coefficients);
        for (int hour = Math.Max(first, 1); hour <= last; hour++)
        {
            ReviewValue onLeaf = HistoryGaps.UpTo(history.Series, hour).TellsOfLeaf
                ? ReviewValue.Known(carried[hour], hours.LeastSure(hour, HoursInDay))
                : ReviewValue.Unknown(WhyUnknown.WeatherBefore);
            yield return hours.At(hour, now, onLeaf);
        }
    }
}
