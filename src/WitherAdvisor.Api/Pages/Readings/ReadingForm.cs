using WitherAdvisor.Api.Pages.Forms;
using WitherAdvisor.Api.Wording;
using WitherAdvisor.Loft.Kept.Sites;
using WitherAdvisor.Readings;

namespace WitherAdvisor.Api.Pages.Readings;

/// <summary>The form of a reading of the air: names of its fields, what it starts with, and how it is read.</summary>
public sealed class ReadingForm(StoredSite site, PersonUnits units)
{
    public const string ReadAt = "read_at";
    public const string Rain = "rain";
    public const string RainHours = "rain_hours";

    private const double MostRainMm = 1000;
    private const double LongestRainHours = 240;

    private readonly WallClock clock = new(site.TimeZone);

    /// <summary>What an untouched form holds: read now.</summary>
    public static IReadOnlyDictionary<string, string> Fresh(WallClock clock, DateTimeOffset now) => new Dictionary<string, string>(StringComparer.Ordinal)
    {
        [TimeFields.Date(ReadAt)] = clock.DateField(now),
        [TimeFields.Time(ReadAt)] = clock.Clock(now),
    };

    /// <summary>What was read; null where the reader found problems.</summary>
    /// <param name="now">No reading is of a later time.</param>
    public EnteredReading? Read(FormReader form, DateTimeOffset now)
    {
        DateTimeOffset? at = form.Time(ReadAt, "Read at", clock, required: true);
        if (at > now.AddMinutes(1))
        {
            form.Refuse(ReadAt, "Read at", $"{clock.DateAndClock(at.Value)} was given; not after now, {clock.DateAndClock(now)}.");
        }

        WeatherReading? air = new BulbFields(site, units).Read(form, at ?? now);
        double? rain = form.Number(Rain, "Rain since the last reading", NumberRange.Plain(0, MostRainMm, "mm"));
        double? hours = form.Number(RainHours, "Hours since the last reading", NumberRange.Plain(0.1, LongestRainHours, "h"), required: rain is not null);
        if (form.Problems.Count == 0 && air is null && rain is null)
        {
            form.Refuse(BulbFields.DryBulb, "Dry bulb", "Nothing was given; give air, wind or rain.");
        }

        return form.Problems.Count > 0 || at is null
            ? null
            : new(air, rain is null ? null : new RainTotal(at.Value.AddHours(-hours!.Value), at.Value, rain.Value));
    }
}
