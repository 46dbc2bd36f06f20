namespace WitherAdvisor.Api.Pages.Curve;

/// <summary>Where the parts of the drawing lie, in units of the view box: made for a phone held upright.</summary>
public static class CurveFrame
{
    public const double Width = 404;
    public const double Height = 430;
    public const double Left = 30;
    public const double Right = 308;
    public const double LabelLeft = 322;
    public const double TurnTop = 20;
    public const double MoistureTop = 30;
    public const double MoistureBottom = 280;
    public const double WaterTop = 314;
    public const double WaterBottom = 386;
    public const double HourBaseline = 404;
    public const double ClockBaseline = 422;
    public const double LabelHeight = 15;
}
