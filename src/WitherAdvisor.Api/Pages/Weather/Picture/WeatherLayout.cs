using WitherAdvisor.Api.Pages.Curve;
using WitherAdvisor.Review;
using WitherAdvisor.Words;
using WitherAdvisor.Words.Units;

namespace WitherAdvisor.Api.Pages.Weather.Picture;

/// <summary>Stacks the panels of a picture of some hours.</summary>
internal sealed class WeatherLayout
{
    private const double Tall = 92;
    private const double Low = 52;
    private const int HoursInDay = 24;

    private readonly IReadOnlyList<ReviewHour> hours;
    private readonly CurveScale time;
    private readonly Wordbook words;
    private readonly WeatherPanels make;
    private readonly List<WeatherPanel> panels = [];
    private double next;

    /// <summary>Of some hours, still without panels.</summary>
    /// <param name="hours">At least one, by time.</param>
    /// <param name="top">Where the first panel begins.</param>
    public WeatherLayout(IReadOnlyList<ReviewHour> hours, double top, Wordbook words)
    {
        this.words = words;
        this.hours = hours;
        next = top;
        time = new(0, Math.Max((hours[^1].Time - hours[0].Time).TotalHours, 1), WeatherFrame.Left, WeatherFrame.Right);
        make = new(hours, X, words);
    }

    public IReadOnlyList<WeatherPanel> Panels => panels;

    /// <summary>Where a time lies.</summary>
    public double X(DateTimeOffset at) => time.Place((at - hours[0].Time).TotalHours);

    public WeatherStretch? Ahead(DateTimeOffset now) => hours[^1].Time > now
        ? new(Math.Max(X(now), WeatherFrame.Left), WeatherFrame.Right, "", "ahead")
        : null;

    public void AddAir(PersonUnits units)
    {
        const double LeastDifferenceK = 4;
        Add(make.Lines(
            words.Say("weather_picture.bulb_and_dew", ("unit", units.DegreeSymbol)), next, Tall, null,
            new("dry", words["air.dry_bulb"], hour => hour.DryBulbC, units.Degrees),
            new("dew", words["air.dew_point"], hour => hour.DewPointC, units.Degrees)));
        Add(make.Lines(
            words.Say("weather_picture.hd", ("unit", units.DegreeSymbol)), next, Low, (0, units.DegreesApart(LeastDifferenceK)),
            new PanelLine("hd", "", hour => hour.HygrometricDifferenceK, units.DegreesApart)));
    }

    public void AddRain(int hoursInBar, string title, double leastHighMm) =>
        Add(make.RainBars(title, next, Low, hoursInBar, leastHighMm));

    public void AddLeaf() => Add(make.Lines(
        words["weather_picture.leaf"], next, Low, (0, 10),
        new PanelLine("water", "", hour => hour.SurfaceWaterKgPerKg, share => share * 100)));

    public void AddSoil(IReadOnlyList<ReviewDay> days) => Add(make.Soil(words["weather_picture.soil"], next, Low, days));

    public IEnumerable<CurveMark> HourMarks(int every, WallClock clock) => hours
        .Where(hour => clock.HourOfDay(hour.Time) % every == 0)
        .Select(hour => new CurveMark(X(hour.Time), clock.Clock(hour.Time)));

    public IEnumerable<CurveMark> DayMarks(IReadOnlyList<ReviewDay> days, WallClock clock)
    {
        const double LeastApart = 44;
        int every = Math.Max((int)Math.Ceiling(LeastApart / (time.Place(HoursInDay) - time.Place(0))), 1);
        return days.Where((day, at) => at % every == 0 && X(day.To) <= WeatherFrame.Right + 1)
            .Select(day => new CurveMark((X(day.From) + X(day.To)) / 2, clock.DayOfMonth(day.From.AddHours(HoursInDay / 2))));
    }

    private void Add(WeatherPanel panel)
    {
        panels.Add(panel);
        next = panel.Bottom + WeatherFrame.Gap;
    }
}
