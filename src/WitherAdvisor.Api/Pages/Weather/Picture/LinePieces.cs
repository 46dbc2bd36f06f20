using WitherAdvisor.Api.Pages.Curve;
using WitherAdvisor.Review;

namespace WitherAdvisor.Api.Pages.Weather.Picture;

/// <summary>Cuts a line where it is unknown, and where what was read gives way to what is foretold.</summary>
internal static class LinePieces
{
    public static List<CurveLine> Of(PanelLine line, IReadOnlyList<ReviewHour> hours, Func<ReviewHour, double> x, CurveScale scale)
    {
        var pieces = new List<CurveLine>();
        var piece = new List<CurvePlace>();
        bool foretold = false;
        foreach (ReviewHour hour in hours)
        {
            ReviewValue value = line.Of(hour);
            bool isForetold = value.Standing == ValueStanding.Foretold;
            if (value.Value is not { } known || isForetold != foretold)
            {
                // The next piece begins where this one ends, unless a hole lies between.
                CurvePlace? joint = value.Value is null || piece.Count == 0 ? null : piece[^1];
                Close(pieces, piece, line.Name, foretold);
                piece = joint is { } place ? [place] : [];
                foretold = isForetold;
            }

            if (value.Value is { } shown)
            {
                piece.Add(new(x(hour), scale.Place(line.Shown(shown))));
            }
        }

        Close(pieces, piece, line.Name, foretold);
        return pieces;
    }

    private static void Close(List<CurveLine> pieces, List<CurvePlace> piece, string name, bool foretold)
    {
        if (piece.Count > 0)
        {
            pieces.Add(new(foretold ? name + " foretold" : name, "", piece, piece[^1].Y));
        }
    }
}
