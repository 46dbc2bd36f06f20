namespace WitherAdvisor.Api.Pages.Weather.Picture;

/// <summary>A stretch of time on the picture.</summary>
/// <param name="From">x of its start.</param>
/// <param name="To">x of its end.</param>
/// <param name="Text">What is written in it; empty where it has no room.</param>
/// <param name="Name">Its class in the style sheet.</param>
public sealed record WeatherStretch(double From, double To, string Text, string Name)
{
    public double Width => To - From;

    public double Middle => (From + To) / 2;
}
