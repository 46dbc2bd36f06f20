namespace WitherAdvisor.Api.Pages.Curve;

/// <summary>Something written at a place along an axis.</summary>
/// <param name="At">x or y on the drawing.</param>
/// <param name="Text">What is written there.</param>
public sealed record CurveMark(double At, string Text);
