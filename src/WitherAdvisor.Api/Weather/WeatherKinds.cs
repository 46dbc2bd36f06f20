using WitherAdvisor.Readings.Sources;

namespace WitherAdvisor.Api.Weather;

/// <summary>What the store calls the kinds of a caller's weather.</summary>
internal static class WeatherKinds
{
    public static WeatherSource ToSource(WeatherKind kind) =>
        kind == WeatherKind.Observed ? WeatherSource.Observed : WeatherSource.CallerForecast;
}
