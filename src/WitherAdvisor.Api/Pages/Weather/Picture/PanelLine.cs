using WitherAdvisor.Review;

namespace WitherAdvisor.Api.Pages.Weather.Picture;

/// <summary>A line to draw.</summary>
/// <param name="Name">Its class in the style sheet.</param>
/// <param name="Label">What stands at its end; empty where the title says it.</param>
/// <param name="Of">Its value at an hour.</param>
/// <param name="Shown">From the model's unit to the one on the scale.</param>
internal sealed record PanelLine(string Name, string Label, Func<ReviewHour, ReviewValue> Of, Func<double, double> Shown);
