namespace WitherAdvisor.Api.Pages.Curve;

/// <summary>A place on the drawing, in units of its view box.</summary>
public readonly record struct CurvePlace(double X, double Y)
{
    /// <summary>A coordinate as SVG holds it.</summary>
    public static string Text(double coordinate) => coordinate.ToString("0.##");
}
