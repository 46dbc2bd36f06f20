namespace WitherAdvisor.Review;

/// <summary>What is read of the weather.</summary>
public enum WeatherQuantity
{
    Temperature,
    Humidity,
    Rain,
    Wind,
}
