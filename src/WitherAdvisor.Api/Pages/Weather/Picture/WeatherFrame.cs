namespace WitherAdvisor.Api.Pages.Weather.Picture;

/// <summary>Where the parts of a weather picture lie, in units of its view box: made for a phone held upright.</summary>
public static class WeatherFrame
{
    public const double Width = 404;
    public const double Left = 30;
    public const double Right = 332;
    public const double LabelLeft = 338;
    public const double LabelHeight = 14;

    /// <summary>From a panel's top to the top of its scale: its title stands there.</summary>
    public const double TitleHeight = 20;

    /// <summary>Between panels.</summary>
    public const double Gap = 8;

    public const double BandTop = 20;
    public const double BandHeight = 20;
    public const double AxisHeight = 22;

    /// <summary>A stretch at least this wide has room for a word.</summary>
    public const double RoomForWord = 58;
}
