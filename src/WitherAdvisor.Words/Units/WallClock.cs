using NodaTime;
using NodaTime.Extensions;
using NodaTime.Text;
using NodaTime.TimeZones;

namespace WitherAdvisor.Words.Units;

/// <summary>The clock on the loft's wall: 24 hours, the site's own zone.</summary>
public sealed class WallClock
{
    private static readonly LocalDatePattern DateInput = LocalDatePattern.CreateWithInvariantCulture("uuuu-MM-dd");
    private static readonly LocalTimePattern TimeInput = LocalTimePattern.CreateWithInvariantCulture("HH:mm");

    private static readonly TimeSpan DaysThatWeekdaysTell = TimeSpan.FromDays(6);

    private readonly DateTimeZone zone;
    private readonly Wordbook words;

    /// <summary>In English, as the interface speaks.</summary>
    public WallClock(string timeZone)
        : this(timeZone, Wordbook.English)
    {
    }

    /// <summary>From an IANA name; UTC stands in for one that this build's zone data does not know.</summary>
    /// <param name="words">What days and months are called in.</param>
    public WallClock(string timeZone, Wordbook words)
    {
        zone = DateTimeZoneProviders.Tzdb.GetZoneOrNull(timeZone) ?? DateTimeZone.Utc;
        this.words = words;
    }

    /// <summary>The zone that times are shown in.</summary>
    public string ZoneName => zone.Id;

    /// <summary>"03:40".</summary>
    public string Clock(DateTimeOffset time) => TimeInput.Format(Local(time).TimeOfDay);

    /// <summary>"Tue 03:40".</summary>
    public string DayAndClock(DateTimeOffset time) => Say("clock.day_and_time", Local(time));

    /// <summary>"Tue 24 Nov 2026, 03:40".</summary>
    public string DateAndClock(DateTimeOffset time) => Say("clock.date_and_time", Local(time));

    /// <summary>"24 Nov".</summary>
    public string DayOfMonth(DateTimeOffset time) => Say("clock.day_of_month", Local(time));

    /// <summary>"Tue 24 Nov".</summary>
    public string Date(DateTimeOffset time) => Say("clock.date", Local(time));

    /// <summary>0 to 23.</summary>
    public int HourOfDay(DateTimeOffset time) => Local(time).Hour;

    /// <summary>The weekday where it tells which day is meant, the date where it does not.</summary>
    public string Near(DateTimeOffset time, DateTimeOffset now) =>
        (time - now).Duration() < DaysThatWeekdaysTell ? DayAndClock(time) : DateAndClock(time);

    /// <summary>As a date field holds it, "2026-11-24".</summary>
    public string DateField(DateTimeOffset time) => DateInput.Format(Local(time).Date);

    /// <summary>To the nearest five minutes: what is forecast is not known closer.</summary>
    public static DateTimeOffset ToFiveMinutes(DateTimeOffset time) => ToMinutes(time, 5);

    /// <summary>
    /// The instant of a date ("2026-11-24") and a 24-hour time ("03:40", "3:40", "0340" or "03.40") typed by a
    /// person; null where either is none, or where clocks skip that time. A time that comes twice is its first.
    /// </summary>
    public DateTimeOffset? Read(string date, string time)
    {
        ParseResult<LocalDate> day = DateInput.Parse(date.Trim());
        ParseResult<LocalTime> clock = TimeInput.Parse(WithColon(time.Trim()));
        if (!day.Success || !clock.Success || day.Value.Year is < 2000 or > 2200)
        {
            return null;
        }

        ZoneLocalMapping mapping = zone.MapLocal(day.Value + clock.Value);
        return mapping.Count == 0 ? null : mapping.First().ToDateTimeOffset();
    }

    private string Say(string key, LocalDateTime time) => words.Say(
        key,
        ("weekday", words.Name(time.DayOfWeek.ToDayOfWeek())),
        ("day", time.Day),
        ("month", words[CalendarDates.MonthKey(time.Month)]),
        ("year", time.Year),
        ("time", TimeInput.Format(time.TimeOfDay)));

    private static string WithColon(string time)
    {
        string digits = string.Concat(time.Where(char.IsAsciiDigit));
        bool plain = time.Length - digits.Length <= 1 && time.All(c => char.IsAsciiDigit(c) || c is ':' or '.');
        return plain && digits.Length is 3 or 4 ? $"{digits[..^2].PadLeft(2, '0')}:{digits[^2..]}" : time;
    }

    private LocalDateTime Local(DateTimeOffset time) =>
        Instant.FromDateTimeOffset(ToMinutes(time, 1)).InZone(zone).LocalDateTime;

    private static DateTimeOffset ToMinutes(DateTimeOffset time, int minutes)
    {
        long step = TimeSpan.FromMinutes(minutes).Ticks;
        return new DateTimeOffset((time.UtcTicks + step / 2) / step * step, TimeSpan.Zero);
    }
}
