using WitherAdvisor.Api.Pages.Curve;

namespace WitherAdvisor.Api.Pages.Weather.Picture;

/// <summary>One strip of a weather picture: a scale with what is drawn on it.</summary>
/// <param name="Title">What is drawn, with its unit.</param>
/// <param name="Top">y of the panel; its title stands below.</param>
/// <param name="ScaleTop">y of the scale's upper end.</param>
/// <param name="Bottom">y of its lower end.</param>
/// <param name="Marks">Of the scale.</param>
public sealed record WeatherPanel(string Title, double Top, double ScaleTop, double Bottom, IReadOnlyList<CurveMark> Marks)
{
    /// <summary>Pieces of lines: a line breaks where it is unknown.</summary>
    public IReadOnlyList<CurveLine> Lines { get; init; } = [];

    /// <summary>Names of lines at their ends, with their classes.</summary>
    public IReadOnlyList<CurveLine> Labels { get; init; } = [];

    public IReadOnlyList<WeatherBar> Bars { get; init; } = [];

    /// <summary>Where nothing is known.</summary>
    public IReadOnlyList<WeatherStretch> Holes { get; init; } = [];
}
