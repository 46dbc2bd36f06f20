using WitherAdvisor.Api.Pages.Forms;
using WitherAdvisor.Loft.Kept.Sites;
using WitherAdvisor.Readings;
using WitherAdvisor.Store;
using WitherAdvisor.Words;
using WitherAdvisor.Words.Units;

namespace WitherAdvisor.Api.Pages.Readings;

/// <summary>The form of a reading of the air: names of its fields, what it starts with, and how it is read.</summary>
public sealed class ReadingForm(StoredSite site, PersonUnits units)
{
    public const string ReadAt = "read_at";
    public const string Rain = "rain";
    public const string RainHours = "rain_hours";

    private const double MostRainMm = 1000;
    private const double LongestRainHours = 240;

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
        Wordbook words = form.Words;
        WallClock clock = new(site.TimeZone, words);
        DateTimeOffset? at = form.Time(ReadAt, words["new_reading.read_at"], clock, required: true);
        if (at > now.AddMinutes(1))
        {
            form.Refuse(ReadAt, words["new_reading.read_at"], words.Say("new_reading.read_at.ahead", ("given", clock.DateAndClock(at.Value)), ("now", clock.DateAndClock(now))));
        }

        WeatherReading? air = new BulbFields(site, units).Read(form, at ?? now);
        double? rain = form.Number(Rain, words["new_reading.rain"], NumberRange.Plain(0, MostRainMm, "mm"));
        double? hours = form.Number(RainHours, words["new_reading.rain_hours"], NumberRange.Plain(0.1, LongestRainHours, "h"), required: rain is not null);
        if (form.Problems.Count == 0 && air is null && rain is null)
        {
            form.Refuse(BulbFields.DryBulb, words["air.dry_bulb.label"], words["new_reading.nothing"]);
        }

        return form.Problems.Count > 0 || at is null
            ? null
            : new(air, rain is null ? null : new RainTotal(at.Value.AddHours(-hours!.Value), at.Value, rain.Value));
    }
}
