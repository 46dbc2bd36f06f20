using WitherAdvisor.WeatherFeeds.Configuration;

namespace WitherAdvisor.WeatherFeeds.Asking;

/// <summary>
/// Writes a query as the address to get. Units and zone are always asked for by name: a server's defaults are its own
/// affair, and labels in local time are one UTC offset for all hours, wrong across a change of the clock.
/// </summary>
internal static class FeedAddress
{
    private static readonly string Wanted = string.Join(',', HourlyVariable.All.Select(variable => variable.Name));

    /// <summary>Null where the feed has no such host.</summary>
    public static Uri? Of(FeedQuery query, FeedOptions options)
    {
        (Uri? host, string path, string span) = query.Span switch
        {
            FeedSpan.Around around => (options.ForecastBaseUrl, "v1/forecast",
                $"past_days={around.PastDays}&forecast_days={around.ForecastDays}"),
            FeedSpan.Days days => (options.ArchiveBaseUrl, "v1/archive",
                $"start_date={days.First:yyyy-MM-dd}&end_date={days.Last:yyyy-MM-dd}"),
            _ => throw new ArgumentOutOfRangeException(nameof(query), query.Span, "not a span"),
        };
        return host is null ? null : new Uri($"{host.AbsoluteUri.TrimEnd('/')}/{path}?{Place(query)}&hourly={Wanted}"
            + "&temperature_unit=celsius&wind_speed_unit=ms&precipitation_unit=mm&timeformat=iso8601&timezone=GMT"
            + $"&{span}{Key(options)}");
    }

    private static string Place(FeedQuery query) =>
        $"latitude={query.LatitudeDeg:0.####}&longitude={query.LongitudeDeg:0.####}&elevation={query.ElevationM:0.#}";

    private static string Key(FeedOptions options) => options is { KeyQueryParameter: { } name, Key: { } key }
        ? $"&{Uri.EscapeDataString(name)}={Uri.EscapeDataString(key)}"
        : "";
}
