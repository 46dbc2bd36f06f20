using NodaTime;

namespace WitherAdvisor.Loft.Sites;

/// <summary>A site's wall clock: instants as people there read them.</summary>
public sealed class SiteClock(string timeZone)
{
    private static readonly TimeSpan Minute = TimeSpan.FromMinutes(1);

    private readonly DateTimeZone zone = DateTimeZoneProviders.Tzdb[timeZone];

    /// <summary>The same instant with the site's offset.</summary>
    public DateTimeOffset Local(DateTimeOffset instant) =>
        Instant.FromDateTimeOffset(instant).InZone(zone).ToDateTimeOffset();

    /// <summary>So many hours after an instant, to the nearest minute, with the site's offset.</summary>
    public DateTimeOffset After(DateTimeOffset instant, double hours)
    {
        DateTimeOffset exact = instant + TimeSpan.FromHours(hours);
        double minutes = Math.Round((double)exact.UtcTicks / Minute.Ticks);
        return Local(new DateTimeOffset((long)minutes * Minute.Ticks, TimeSpan.Zero));
    }

    public DateTimeOffset? After(DateTimeOffset instant, double? hours) =>
        hours is { } known ? After(instant, known) : null;
}
