namespace WitherAdvisor.Api.Wording;

/// <summary>The scale a person reads their thermometers in.</summary>
public enum TemperatureScale
{
    Celsius,
    Fahrenheit,
}
