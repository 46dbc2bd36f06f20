using WitherAdvisor.Air;
using WitherAdvisor.Readings;
using WitherAdvisor.Readings.Hourly;
using WitherAdvisor.Readings.Sources;
using WitherAdvisor.Sites;

namespace WitherAdvisor.Ambient;

/// <summary>The ambient air of the coming hours, from what is forecast, else from what was read.</summary>
/// <param name="Ambient">Null where no air is known at all.</param>
/// <param name="Assumptions">What was not known and what was taken in its place.</param>
/// <param name="IsComplete">Whether every hour was known.</param>
internal sealed record ForecastAhead(AmbientForecast? Ambient, IReadOnlyList<Assumption> Assumptions, bool IsComplete)
{
    private const int DaysToLookBack = 2;
    private const int HoursADay = 24;

    /// <summary>Air by the hour from loading, to a number of hours after it.</summary>
    public static ForecastAhead Of(
        Site site, DateTimeOffset loadedAt, IReadOnlyList<WeatherReading> readings, BiasCorrectedForecast forecast, double hours)
    {
        // Where both are known for an instant, what was read wins: it stands last.
        HourlySeries series = HourlySeries.Between(
            loadedAt.AddDays(-DaysToLookBack), loadedAt.AddHours(hours + 2), [.. forecast.Readings, .. readings], [], site.PressurePa);
        var air = new AirState?[(int)Math.Ceiling(hours) + 2];
        for (int hour = 0; hour < air.Length; hour++)
        {
            air[hour] = series.AirAt(loadedAt.AddHours(hour));
        }

        int unknown = air.Count(state => state is null);
        if (unknown == 0)
        {
            return new(new AmbientForecast([.. air.Select(state => state!.Value)]), [.. Said(forecast)], true);
        }

        int fromDayBefore = FillFromDayBefore(air, series, loadedAt);
        AirState? last = LastKnown(series, loadedAt);
        int held = Hold(air, last);
        return air[0] is null
            ? new(null, [], false)
            : new(
                new AmbientForecast([.. air.Select(state => state!.Value)]),
                [.. Said(forecast), new Assumption.AirNotForecast(unknown, air.Length, fromDayBefore, held)],
                false);
    }

    private static int FillFromDayBefore(AirState?[] air, HourlySeries series, DateTimeOffset loadedAt)
    {
        int filled = 0;
        for (int hour = 0; hour < air.Length; hour++)
        {
            for (int days = 1; days <= DaysToLookBack && air[hour] is null; days++)
            {
                air[hour] = hour >= days * HoursADay
                    ? air[hour - days * HoursADay]
                    : series.AirAt(loadedAt.AddHours(hour - days * HoursADay));
                filled += air[hour] is null ? 0 : 1;
            }
        }

        return filled;
    }

    private static AirState? LastKnown(HourlySeries series, DateTimeOffset loadedAt)
    {
        for (int hour = 0; hour <= DaysToLookBack * HoursADay; hour++)
        {
            if (series.AirAt(loadedAt.AddHours(-hour)) is { } air)
            {
                return air;
            }
        }

        return null;
    }

    private static int Hold(AirState?[] air, AirState? last)
    {
        int held = 0;
        last ??= air.FirstOrDefault(state => state is not null);
        for (int hour = 0; hour < air.Length; hour++)
        {
            held += air[hour] is null ? 1 : 0;
            last = air[hour] ??= last;
        }

        return held;
    }

    private static IEnumerable<Assumption> Said(BiasCorrectedForecast moved)
    {
        if (moved.IsMoved)
        {
            yield return new Assumption.ForecastBiasCorrected(moved.DryBulbK, moved.DewPointK, BiasCorrectedForecast.HalvesInH);
        }
    }
}
