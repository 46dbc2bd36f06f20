using WitherAdvisor.Api.Pages.Curve;
using WitherAdvisor.Review;
using WitherAdvisor.Words;
using WitherAdvisor.Words.Units;

namespace WitherAdvisor.Api.Pages.Weather.Picture;

/// <summary>Lays out the strips of a picture over one stretch of hours.</summary>
/// <param name="hours">By time.</param>
/// <param name="x">Where a time lies.</param>
/// <param name="words">Of the person.</param>
internal sealed class WeatherPanels(IReadOnlyList<ReviewHour> hours, Func<DateTimeOffset, double> x, Wordbook words)
{
    /// <summary>Marks closer than this would crowd.</summary>
    private const double LeastBetweenMarks = 17;


    private static readonly double[] Steps = [0.5, 1, 2, 5, 10, 20, 50, 100, 200];

    /// <summary>Lines on one scale that holds them all.</summary>
    /// <param name="least">What the scale reaches at least, low and high; where both are given the low end is fixed.</param>
    public WeatherPanel Lines(string title, double top, double height, (double? Low, double High)? least, params IReadOnlyList<PanelLine> lines)
    {
        double[] shown =
        [
            .. lines.SelectMany(line =>
                hours.Select(line.Of).Where(value => value.Value is not null).Select(value => line.Shown(value.Value!.Value))),
        ];
        CurveScale scale = Scale(shown, least, top, height, out IReadOnlyList<CurveMark> marks);
        List<CurveLine>[] pieces = [.. lines.Select(line => LinePieces.Of(line, hours, hour => x(hour.Time), scale))];
        return Panel(title, top, height, marks) with
        {
            Lines = [.. pieces.SelectMany(line => line)],
            Labels = Labels(lines, pieces, top, height),
            Holes = Holes(hour => lines.Any(line => line.Of(hour).Value is null)),
        };
    }

    /// <summary>Rain summed over so many hours a bar.</summary>
    public WeatherPanel RainBars(string title, double top, double height, int hoursInBar, double leastHigh)
    {
        ReviewHour[][] groups = [.. hours.Skip(1).Chunk(hoursInBar)];
        double[] sums = [.. groups.Select(group => group.Sum(hour => hour.RainMm.Value ?? 0))];
        CurveScale scale = Scale(sums, (0, leastHigh), top, height, out IReadOnlyList<CurveMark> marks);
        return Panel(title, top, height, marks) with
        {
            Bars = [.. groups.Zip(sums).Where(bar => bar.Second > 0).Select(bar => Bar(bar.First, bar.Second, scale))],
            Holes = Holes(hour => hour.RainMm.Value is null),
        };
    }

    /// <summary>The soil at the end of each day, hanging from full.</summary>
    public WeatherPanel Soil(string title, double top, double height, IReadOnlyList<ReviewDay> days)
    {
        const double LeastScaleMm = 40;
        ReviewDay[] inside = [.. days.Where(day => day.To <= hours[^1].Time)];
        double[] known = [.. inside.Select(day => day.DepletionMm.Value).OfType<double>()];
        CurveScale scale = Scale(known, (0, LeastScaleMm), top, height, out _);
        CurveScale hanging = scale with { AtLow = scale.AtHigh, AtHigh = scale.AtLow };
        CurvePlace[] points =
        [
            .. inside.Where(day => day.DepletionMm.Value is not null)
                .Select(day => new CurvePlace(x(day.To), hanging.Place(day.DepletionMm.Value!.Value))),
        ];
        return Panel(title, top, height, Marks(hanging)) with
        {
            Lines = points.Length == 0 ? [] : [new("soil", "", points, points[^1].Y)],
            Holes =
            [
                .. inside.Where(day => day.DepletionMm.Value is null)
                    .Select(day => new WeatherStretch(Math.Max(x(day.From), WeatherFrame.Left), x(day.To), "", "hole")),
            ],
        };
    }

    private static WeatherPanel Panel(string title, double top, double height, IReadOnlyList<CurveMark> marks) =>
        new(title, top, top + WeatherFrame.TitleHeight, top + WeatherFrame.TitleHeight + height, marks);

    private static CurveScale Scale(
        double[] shown, (double? Low, double High)? least, double top, double height, out IReadOnlyList<CurveMark> marks)
    {
        double low = least?.Low ?? (shown.Length > 0 ? shown.Min() : 0);
        double high = Math.Max(shown.Length > 0 ? shown.Max() : low + 1, least?.High ?? low + 1);
        double step = new CurveScale(low, high, 0, 1).Step(Steps, (int)(height / LeastBetweenMarks));
        CurveScale scale = new(
            Math.Floor(low / step) * step, Math.Ceiling(high / step) * step,
            top + WeatherFrame.TitleHeight + height, top + WeatherFrame.TitleHeight);
        marks = Marks(scale);
        return scale;
    }

    private static CurveMark[] Marks(CurveScale scale)
    {
        double step = scale.Step(Steps, (int)(Math.Abs(scale.AtLow - scale.AtHigh) / LeastBetweenMarks));
        return [.. scale.Marks(step).Select(mark => new CurveMark(scale.Place(mark), Figures.Fixed(mark, step < 1 ? 1 : 0)))];
    }

    private static CurveLine[] Labels(IReadOnlyList<PanelLine> lines, List<CurveLine>[] pieces, double top, double height)
    {
        (PanelLine Line, CurveLine Last)[] named =
        [
            .. lines.Zip(pieces)
                .Where(line => line.Second.Count > 0 && line.First.Label.Length > 0)
                .Select(line => (line.First, line.Second[^1])),
        ];
        IReadOnlyList<double> places = CurveLabels.Spread(
            [.. named.Select(line => line.Last.LabelY)], WeatherFrame.LabelHeight,
            top + WeatherFrame.TitleHeight + 4, top + WeatherFrame.TitleHeight + height);
        return [.. named.Select((line, i) => new CurveLine(line.Line.Name, line.Line.Label, [line.Last.Points[^1]], places[i]))];
    }

    private WeatherBar Bar(ReviewHour[] group, double sum, CurveScale scale)
    {
        double from = x(group[0].Time.AddHours(-1));
        double to = x(group[^1].Time);
        double y = scale.Place(sum);
        bool forecast = group.Count(hour => hour.RainMm.Standing == ValueStanding.Forecast) * 2 > group.Length;
        return new(from, y, Math.Max(to - from - 0.6, 0.5), scale.AtLow - y, forecast ? "rain forecast" : "rain");
    }

    private List<WeatherStretch> Holes(Func<ReviewHour, bool> isHole)
    {
        var holes = new List<WeatherStretch>();
        for (int at = 0; at < hours.Count;)
        {
            int start = at;
            bool hole = isHole(hours[at]);
            while (at < hours.Count && isHole(hours[at]) == hole)
            {
                at++;
            }

            if (hole)
            {
                double from = Math.Max(x(hours[start].Time.AddHours(-1)), WeatherFrame.Left);
                double to = Math.Max(x(hours[at - 1].Time), from + 1);
                holes.Add(new(from, to, to - from > WeatherFrame.RoomForWord ? words["spell.not_known"] : to - from > 8 ? "?" : "", "hole"));
            }
        }

        return holes;
    }
}
