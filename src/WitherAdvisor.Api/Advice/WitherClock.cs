using WitherAdvisor.Api.Sites;
using WitherAdvisor.Loft.Sites;

namespace WitherAdvisor.Api.Advice;

/// <summary>Hours of a wither as times on the site's wall clock.</summary>
internal sealed class WitherClock(string timeZone, DateTimeOffset loadedAt)
{
    private readonly SiteClock clock = new(timeZone);

    public DateTimeOffset At(double hour) => clock.After(loadedAt, hour);

    public DateTimeOffset? At(double? hour) => hour is { } known ? At(known) : null;
}
