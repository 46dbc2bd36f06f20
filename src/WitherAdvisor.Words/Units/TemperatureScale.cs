namespace WitherAdvisor.Words.Units;

/// <summary>The scale a person reads their thermometers in.</summary>
public enum TemperatureScale
{
    Celsius,
    Fahrenheit,
}
