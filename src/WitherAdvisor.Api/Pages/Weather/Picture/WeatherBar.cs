namespace WitherAdvisor.Api.Pages.Weather.Picture;

/// <summary>A bar on the picture.</summary>
/// <param name="Name">Its class in the style sheet.</param>
public sealed record WeatherBar(double X, double Y, double Width, double Height, string Name);
