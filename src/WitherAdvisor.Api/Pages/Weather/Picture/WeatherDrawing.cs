using WitherAdvisor.Api.Pages.Curve;
using WitherAdvisor.Review;
using WitherAdvisor.Words;
using WitherAdvisor.Words.Units;

namespace WitherAdvisor.Api.Pages.Weather.Picture;

/// <summary>A picture of the weather, laid out: every line, bar, hole and word with its place.</summary>
/// <param name="Id">Its name on the page, which its parts are labelled by.</param>
/// <param name="Title">What it shows.</param>
/// <param name="Description">The same in sentences, for those who do not see it.</param>
/// <param name="Panels">From the top.</param>
/// <param name="Spells">By day; empty where the picture has no band of them.</param>
/// <param name="Ahead">Hours that have not come; null where there are none.</param>
/// <param name="TimeMarks">Below the panels.</param>
public sealed record WeatherDrawing(
    string Id,
    string Title,
    string Description,
    IReadOnlyList<WeatherPanel> Panels,
    IReadOnlyList<WeatherStretch> Spells,
    WeatherStretch? Ahead,
    IReadOnlyList<CurveMark> TimeMarks)
{
    private const int HoursInRainBar = 6;
    private const int HoursBeforeNow = 12;
    private const int HoursBetweenMarks = 6;

    /// <summary>Lower end of the lowest panel.</summary>
    public double Bottom => Panels[^1].Bottom;

    public double Height => Bottom + WeatherFrame.AxisHeight;

    /// <summary>All days and the coming night, with the spell of each day.</summary>
    public static WeatherDrawing OfDays(WeatherReview review, WallClock clock, PersonUnits units, Wordbook words)
    {
        WeatherLayout layout = new(review.Hours, WeatherFrame.BandTop + WeatherFrame.BandHeight + WeatherFrame.Gap, words);
        layout.AddAir(units);
        layout.AddRain(HoursInRainBar, words.Say("weather_picture.rain_in_hours", ("hours", HoursInRainBar)), leastHighMm: 4);
        layout.AddLeaf();
        layout.AddSoil(review.Days);
        return new(
            "days", words.Say("weather_picture.days", ("count", review.Span.Days)), new WeatherDescription(words, units).OfDays(review),
            layout.Panels, SpellBand.Of(words, review.Days, review.Hours[^1].Time, layout.X), layout.Ahead(review.Span.Now),
            [.. layout.DayMarks(review.Days, clock)]);
    }

    /// <summary>From some hours ago through the coming night.</summary>
    public static WeatherDrawing OfNight(WeatherReview review, WallClock clock, PersonUnits units, Wordbook words)
    {
        ReviewHour[] hours = [.. review.Hours.Where(hour => hour.Time >= review.Span.Now.AddHours(-HoursBeforeNow))];
        WeatherLayout layout = new(hours, 0, words);
        layout.AddAir(units);
        layout.AddRain(1, words["weather_picture.rain_in_hour"], leastHighMm: 2);
        layout.AddLeaf();
        return new(
            "night", words.Say("weather_picture.night", ("count", HoursBeforeNow)), new WeatherDescription(words, units).OfNight(hours),
            layout.Panels, [], layout.Ahead(review.Span.Now), [.. layout.HourMarks(HoursBetweenMarks, clock)]);
    }
}
