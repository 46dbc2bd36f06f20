using WitherAdvisor.Api.Pages.Curve;
using WitherAdvisor.Review;

namespace WitherAdvisor.Api.Pages.Weather.Picture;

/// <summary>Cuts a line where it is unknown, and where what was read gives way to what is forecast.</summary>
internal static class LinePieces
{
    public static List<CurveLine> Of(PanelLine line, IReadOnlyList<ReviewHour> hours, Func<ReviewHour, double> x, CurveScale scale)
    {
        var pieces = new List<CurveLine>();
        var piece = new List<CurvePlace>();
        bool forecast = false;
        foreach (ReviewHour hour in hours)
        {
            ReviewValue value = line.Of(hour);
            bool isForecast = value.Standing == ValueStanding.Forecast;
            if (value.Value is not { } known || isForecast != forecast)
            {
                // The next piece begins where this one ends, unless a hole lies between.
                CurvePlace? joint = value.Value is null || piece.Count == 0 ? null : piece[^1];
                Close(pieces, piece, line.Name, forecast);
                piece = joint is { } place ? [place] : [];
                forecast = isForecast;
            }

            if (value.Value is { } shown)
            {
                piece.Add(new(x(hour), scale.Place(line.Shown(shown))));
            }
        }

        Close(pieces, piece, line.Name, forecast);
        return pieces;
    }

    private static void Close(List<CurveLine> pieces, List<CurvePlace> piece, string name, bool forecast)
    {
        if (piece.Count > 0)
        {
            pieces.Add(new(forecast ? name + " forecast" : name, "", piece, piece[^1].Y));
        }
    }
}
