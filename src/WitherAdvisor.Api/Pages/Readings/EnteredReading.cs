using WitherAdvisor.Readings;

namespace WitherAdvisor.Api.Pages.Readings;

/// <summary>What a person read: the air, the gauge, or both.</summary>
public sealed record EnteredReading(WeatherReading? Air, RainTotal? Rain);
