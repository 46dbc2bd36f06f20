using WitherAdvisor.Review;
using WitherAdvisor.Words;
using WitherAdvisor.Words.Units;

namespace WitherAdvisor.Api.Pages.Weather.Picture;

/// <summary>What a picture shows, in sentences for those who do not see it.</summary>
internal sealed class WeatherDescription(Wordbook words, PersonUnits units)
{
    public string OfDays(WeatherReview review) =>
        $"{Air(review.Hours)} {Rain(review.Hours)} {words["weather_picture.see_days"]}";

    public string OfNight(IReadOnlyList<ReviewHour> hours) =>
        $"{Air(hours)} {Difference([.. hours.Where(hour => hour.IsAhead)])} {Rain(hours)} {words["weather_picture.see_hours"]}";

    private string Air(IReadOnlyList<ReviewHour> hours)
    {
        double[] dry = [.. hours.Select(hour => hour.DryBulbC.Value).OfType<double>()];
        return dry.Length == 0 ? words["weather_picture.air_not_known"] : words.Say(
            dry.Length == hours.Count ? "weather_picture.air" : "weather_picture.air_partly",
            ("low", units.TemperatureText(dry.Min())), ("high", units.TemperatureText(dry.Max())),
            ("unknown", hours.Count - dry.Length), ("hours", hours.Count));
    }

    private string Difference(IReadOnlyList<ReviewHour> ahead)
    {
        double[] apart = [.. ahead.Select(hour => hour.HygrometricDifferenceK.Value).OfType<double>()];
        return apart.Length == 0
            ? words["weather_picture.no_difference"]
            : words.Say("weather_picture.difference", ("low", units.DifferenceText(apart.Min())), ("high", units.DifferenceText(apart.Max())));
    }

    private string Rain(IReadOnlyList<ReviewHour> hours)
    {
        double came = hours.Where(hour => !hour.IsAhead).Sum(hour => hour.RainMm.Value ?? 0);
        double ahead = hours.Where(hour => hour.IsAhead).Sum(hour => hour.RainMm.Value ?? 0);
        int unknown = hours.Count(hour => hour.RainMm.Value is null);
        return words.Say(
            unknown == 0 ? "weather_picture.rain" : "weather_picture.rain_partly",
            ("came", Figures.Millimetres(came)), ("ahead", Figures.Millimetres(ahead)), ("unknown", unknown), ("hours", hours.Count));
    }
}
