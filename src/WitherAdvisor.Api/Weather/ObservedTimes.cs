using WitherAdvisor.Fields;

namespace WitherAdvisor.Api.Weather;

/// <summary>What was observed is of a time that has come, but for clocks that go fast.</summary>
internal static class ObservedTimes
{
    private static readonly TimeSpan FastClock = TimeSpan.FromMinutes(15);

    /// <summary>The last time that something observed now can bear.</summary>
    public static DateTimeOffset Latest(TimeProvider clock) => clock.GetUtcNow() + FastClock;

    /// <summary>What is wrong with a time; null where nothing is.</summary>
    /// <param name="latest">Null where the time may lie ahead.</param>
    public static FieldError? Check(string field, DateTimeOffset time, DateTimeOffset? latest) => time > latest
        ? FieldError.Of(field, $"\"{Rfc3339.Format(time)}\"", $"at most 15 minutes from now, {Rfc3339.Format(latest.Value)}, as what is observed has been")
        : null;
}
