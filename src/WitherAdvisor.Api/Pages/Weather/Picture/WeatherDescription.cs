using WitherAdvisor.Api.Wording;
using WitherAdvisor.Review;

namespace WitherAdvisor.Api.Pages.Weather.Picture;

/// <summary>What a picture shows, in sentences for those who do not see it.</summary>
internal static class WeatherDescription
{
    public static string OfDays(WeatherReview review, PersonUnits units) =>
        $"{Air(review.Hours, units)} {Rain(review.Hours)} The spell and the soil's water of each day stand in the table by day.";

    public static string OfNight(IReadOnlyList<ReviewHour> hours, PersonUnits units) =>
        $"{Air(hours, units)} {Difference([.. hours.Where(hour => hour.IsAhead)], units)} {Rain(hours)} The hours stand in the table by hour.";

    private static string Air(IReadOnlyList<ReviewHour> hours, PersonUnits units)
    {
        double[] dry = [.. hours.Select(hour => hour.DryBulbC.Value).OfType<double>()];
        int unknown = hours.Count - dry.Length;
        return dry.Length == 0
            ? "The air is not known."
            : $"Dry bulb from {units.TemperatureText(dry.Min())} to {units.TemperatureText(dry.Max())}"
                + (unknown == 0 ? "." : $"; not known in {unknown} of {hours.Count} hours.");
    }

    private static string Difference(IReadOnlyList<ReviewHour> ahead, PersonUnits units)
    {
        double[] apart = [.. ahead.Select(hour => hour.HygrometricDifferenceK.Value).OfType<double>()];
        return apart.Length == 0
            ? "The hygrometric difference of the coming night is not foretold."
            : $"The hygrometric difference of the coming night is foretold from {units.DifferenceText(apart.Min())} to {units.DifferenceText(apart.Max())}.";
    }

    private static string Rain(IReadOnlyList<ReviewHour> hours)
    {
        double came = hours.Where(hour => !hour.IsAhead).Sum(hour => hour.RainMm.Value ?? 0);
        double ahead = hours.Where(hour => hour.IsAhead).Sum(hour => hour.RainMm.Value ?? 0);
        int unknown = hours.Count(hour => hour.RainMm.Value is null);
        return $"Rain: {Figures.Millimetres(came)} so far, {Figures.Millimetres(ahead)} foretold"
            + (unknown == 0 ? "." : $"; not known in {unknown} of {hours.Count} hours.");
    }
}
