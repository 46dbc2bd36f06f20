namespace WitherAdvisor.Store;

/// <summary>Whether a reading was taken or foretold.</summary>
public enum WeatherKind
{
    Observed,
    Forecast,
}
