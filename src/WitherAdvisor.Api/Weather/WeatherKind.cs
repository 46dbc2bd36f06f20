namespace WitherAdvisor.Api.Weather;

/// <summary>Whether a caller's reading was observed or is a forecast.</summary>
public enum WeatherKind
{
    Observed,
    Forecast,
}
