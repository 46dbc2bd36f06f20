namespace WitherAdvisor.Api.Pages.Model;

/// <summary>Where the parts of the picture lie, in units of the view box: made for a phone held upright.</summary>
public static class TornadoFrame
{
    public const double Width = 360;
    public const double Middle = Width / 2;
    public const double Reach = 122;
    public const double HeadingHeight = 30;
    public const double RowHeight = 44;
    public const double TitleBaseline = 13;
    public const double BarTop = 19;
    public const double BarHeight = 14;
    public const double BarMiddle = BarTop + BarHeight / 2;
    public const double LabelBaseline = BarTop + 11.5;
    public const double LabelGap = 5;
    public const double AxisHeight = 24;
}
