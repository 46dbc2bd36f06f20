using WitherAdvisor.Plans;
using WitherAdvisor.Words;
using WitherAdvisor.Words.Units;

namespace WitherAdvisor.Api.Pages.Curve;

/// <summary>The curve of a wither, laid out: every line, mark and word with its place on the drawing.</summary>
public sealed class CurveDrawing
{
    private const double MoistureStep = 0.05;
    private const double WaterStep = 0.05;
    private const double RisesByKg = 0.5;

    private static readonly double[] HourSteps = [1, 2, 3, 4, 6, 12];
    private static readonly double[] FractionSteps = [0.05, 0.1, 0.2];

    /// <summary>More clock times would run into one another.</summary>
    private const int MostHourSteps = 6;

    private readonly IReadOnlyList<CurvePoint> curve;
    private readonly Wordbook words;

    /// <summary>Lays out a curve of at least one point.</summary>
    /// <param name="curve">By hour.</param>
    /// <param name="turnHours">Hours from loading at which the leaf is turned.</param>
    /// <param name="targetMoistureWetBasis">What the leaf is withered to.</param>
    /// <param name="loadedAt">Hour 0.</param>
    /// <param name="clock">The site's.</param>
    /// <param name="words">Of the person.</param>
    public CurveDrawing(
        IReadOnlyList<CurvePoint> curve, IReadOnlyList<double> turnHours, double targetMoistureWetBasis,
        DateTimeOffset loadedAt, WallClock clock, Wordbook words)
    {
        this.curve = curve;
        this.words = words;
        Hours = new(0, Math.Max(curve[^1].Hour, 1), CurveFrame.Left, CurveFrame.Right);
        Moisture = MoistureScale(curve, targetMoistureWetBasis);
        double most = Math.Max(curve.Max(point => point.SurfaceWaterKgPerKg), WaterStep);
        Water = new(0, Math.Ceiling(most / WaterStep) * WaterStep, CurveFrame.WaterBottom, CurveFrame.WaterTop);
        Lots = [.. LaidOnHours(curve).Select(hour => new CurveMark(Hours.Place(hour), clock.Clock(loadedAt.AddHours(hour))))];
        Turns = [.. turnHours.Where(hour => hour <= Hours.High).Select(hour => new CurveMark(Hours.Place(hour), clock.Clock(loadedAt.AddHours(hour))))];
        TargetY = Moisture.Place(targetMoistureWetBasis);
        TargetText = words.Say("curve.target", ("moisture", Figures.Percent(targetMoistureWetBasis, 1)));
        MoistureLines = Lines();
        WaterLine = new("water", "", Places(point => Water.Place(point.SurfaceWaterKgPerKg)), Water.Place(curve[^1].SurfaceWaterKgPerKg));
        HourMarks = [.. Hours.Marks(Hours.Step(HourSteps, MostHourSteps)).Select(hour => new CurveMark(Hours.Place(hour), Figures.Fixed(hour, 0)))];
        ClockMarks =
        [
            .. Hours.Marks(Hours.Step(HourSteps, MostHourSteps))
                .Select(hour => new CurveMark(Hours.Place(hour), clock.Clock(loadedAt.AddHours(hour)))),
        ];
    }

    public CurveScale Hours { get; }

    public CurveScale Moisture { get; }

    public CurveScale Water { get; }

    public IReadOnlyList<CurveLine> MoistureLines { get; }

    public CurveLine WaterLine { get; }

    public IReadOnlyList<CurveMark> Turns { get; }

    /// <summary>Where leaf was laid on what lay there.</summary>
    public IReadOnlyList<CurveMark> Lots { get; }

    public IReadOnlyList<CurveMark> HourMarks { get; }

    /// <summary>The site's clock at each mark of <see cref="HourMarks"/>.</summary>
    public IReadOnlyList<CurveMark> ClockMarks { get; }

    public IReadOnlyList<CurveMark> MoistureMarks =>
        [.. Moisture.Marks(Moisture.Step(FractionSteps, 7)).Select(mark => new CurveMark(Moisture.Place(mark), Figures.Fixed(mark * 100, 0)))];

    public IReadOnlyList<CurveMark> WaterMarks =>
        [.. Water.Marks(Water.Step(FractionSteps, 3)).Select(mark => new CurveMark(Water.Place(mark), Figures.Fixed(mark * 100, 0)))];

    public double TargetY { get; }

    public string TargetText { get; }

    /// <summary>The curve in one sentence, for those who do not see it.</summary>
    public string Description
    {
        get
        {
            CurvePoint first = curve[0];
            CurvePoint last = curve[^1];
            double? dry = curve.FirstOrDefault(point => point.SurfaceWaterKgPerKg < 0.005)?.Hour;
            string share = Figures.Percent(first.SurfaceWaterKgPerKg);
            string water = first.SurfaceWaterKgPerKg < 0.005 ? words["curve.no_water"]
                : dry is { } hour ? words.Say("curve.water_gone", ("share", share), ("hours", Figures.Hours(hour)))
                : words.Say("curve.water_left", ("share", share));
            string moisture = words.Say(
                "curve.moisture",
                ("hours", Figures.Hours(last.Hour)), ("first", Figures.Percent(first.MeanMoistureWetBasis, 1)), ("last", Figures.Percent(last.MeanMoistureWetBasis, 1)),
                ("bottom", Figures.Percent(last.BottomMoistureWetBasis, 1)), ("middle", Figures.Percent(last.MiddleMoistureWetBasis, 1)),
                ("top", Figures.Percent(last.TopMoistureWetBasis, 1)));
            string turns = Turns.Count == 0 ? words["curve.no_turn"] : words.Say("curve.turned_at", ("times", string.Join(", ", Turns.Select(turn => turn.Text))));
            string lots = Lots.Count == 0 ? "" : " " + words.Say("curve.laid_at", ("times", string.Join(", ", Lots.Select(lot => lot.Text))));
            return $"{moisture} {water}{lots} {turns}";
        }
    }

    /// <summary>Leaf only grows lighter but where more is laid on, a kilogram at least.</summary>
    private static IEnumerable<double> LaidOnHours(IReadOnlyList<CurvePoint> curve) =>
        curve.Zip(curve.Skip(1))
            .Where(pair => pair.Second.LeafWeightKg > pair.First.LeafWeightKg + RisesByKg)
            .Select(pair => pair.Second.Hour).Distinct();

    private static CurveScale MoistureScale(IReadOnlyList<CurvePoint> curve, double target)
    {
        double low = Math.Min(target, curve.Min(point => Math.Min(
            Math.Min(point.BottomMoistureWetBasis, point.MiddleMoistureWetBasis),
            Math.Min(point.TopMoistureWetBasis, point.MeanMoistureWetBasis))));
        double high = Math.Max(target, curve.Max(point => Math.Max(
            Math.Max(point.BottomMoistureWetBasis, point.MiddleMoistureWetBasis),
            Math.Max(point.TopMoistureWetBasis, point.MeanMoistureWetBasis))));
        return new(
            Math.Floor(low / MoistureStep) * MoistureStep,
            Math.Floor(high / MoistureStep + 1) * MoistureStep,
            CurveFrame.MoistureBottom,
            CurveFrame.MoistureTop);
    }

    private CurveLine[] Lines()
    {
        (string Name, Func<CurvePoint, double> Moisture)[] named =
        [
            ("top", point => point.TopMoistureWetBasis),
            ("middle", point => point.MiddleMoistureWetBasis),
            ("bottom", point => point.BottomMoistureWetBasis),
            ("mean", point => point.MeanMoistureWetBasis),
        ];
        IReadOnlyList<double> labels = CurveLabels.Spread(
            [.. named.Select(line => Moisture.Place(line.Moisture(curve[^1])))],
            CurveFrame.LabelHeight, CurveFrame.MoistureTop + 4, CurveFrame.MoistureBottom - 2);
        return [.. named.Select((line, i) => new CurveLine(
            line.Name,
            $"{words[$"layer.{line.Name}"]} {Figures.Fixed(line.Moisture(curve[^1]) * 100, 1)}",
            Places(point => Moisture.Place(line.Moisture(point))),
            labels[i]))];
    }

    private CurvePlace[] Places(Func<CurvePoint, double> y) =>
        [.. curve.Select(point => new CurvePlace(Hours.Place(point.Hour), y(point)))];
}
