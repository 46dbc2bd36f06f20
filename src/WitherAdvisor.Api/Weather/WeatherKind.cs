namespace WitherAdvisor.Api.Weather;

/// <summary>Whether a reading that a caller gives was taken or forecast.</summary>
public enum WeatherKind
{
    Observed,
    Forecast,
}
