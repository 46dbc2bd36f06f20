using WitherAdvisor.Api.ModelCard;
using WitherAdvisor.Api.Pages.Curve;
using WitherAdvisor.Sensitivities;
using WitherAdvisor.Words;
using WitherAdvisor.Words.Plans;
using WitherAdvisor.Words.Units;

namespace WitherAdvisor.Api.Pages.Model;

/// <summary>What matters most, laid out: every bar and word with its place on the picture.</summary>
public sealed class TornadoDrawing
{
    /// <summary>What moves the hours by less leaves no mark.</summary>
    private const double SeenHours = 0.05;

    private const int MostMarks = 5;
    private static readonly double[] HourSteps = [0.5, 1, 2, 3, 6, 12];

    private readonly CurveScale scale;
    private readonly Wordbook words;

    /// <summary>Lays out the bars of a batch.</summary>
    /// <param name="id">Of the batch, to tell two pictures of a page apart.</param>
    public TornadoDrawing(string id, Sensitivity sensitivity, Wordbook words)
    {
        this.words = words;
        Id = id;
        Description = SensitivitySummary.Of(words, sensitivity);
        double most = Math.Max(Math.Ceiling(MostHours(sensitivity) * 2) / 2, HourSteps[0]);
        scale = new(-most, most, TornadoFrame.Middle - TornadoFrame.Reach, TornadoFrame.Middle + TornadoFrame.Reach);
        var rows = new List<TornadoRow>();
        var headings = new List<TornadoHeading>();
        double top = 0;
        foreach (SensitivityReach reach in Enum.GetValues<SensitivityReach>())
        {
            headings.Add(new(top, words.Name(reach)));
            top += TornadoFrame.HeadingHeight;
            if (reach == SensitivityReach.P10ToP90)
            {
                Together = TogetherRow(top, sensitivity);
                top += TornadoFrame.RowHeight;
            }

            foreach (InputSensitivity bar in sensitivity.Inputs.Where(bar => bar.Reach == reach))
            {
                rows.Add(Row(top, bar));
                top += TornadoFrame.RowHeight;
            }
        }

        Rows = rows;
        Headings = headings;
        Bottom = top;
    }

    public string Id { get; }

    /// <summary>The picture in words, for those who do not see it.</summary>
    public string Description { get; }

    /// <summary>All that is uncertain moved together: the band of the ready time.</summary>
    public TornadoRow Together { get; } = new(0, "", "", null, null);

    public IReadOnlyList<TornadoRow> Rows { get; }

    public IReadOnlyList<TornadoHeading> Headings { get; }

    /// <summary>y of the axis.</summary>
    public double Bottom { get; }

    public double Height => Bottom + TornadoFrame.AxisHeight;

    /// <summary>Hours sooner or later than the plan.</summary>
    public IReadOnlyList<CurveMark> Marks =>
        [.. scale.Marks(scale.Step(HourSteps, MostMarks)).Select(hours => new CurveMark(scale.Place(hours), MarkText(hours)))];

    private string MarkText(double hours) =>
        Math.Abs(hours) < SeenHours ? words["tornado.plan"] : $"{(hours > 0 ? "+" : "")}{Figures.Fixed(hours, hours % 1 == 0 ? 0 : 1)} h";

    private static double MostHours(Sensitivity sensitivity) => sensitivity.Inputs
        .SelectMany(bar => new[] { bar.ChangeAtLowHours, bar.ChangeAtHighHours })
        .Append(sensitivity.ReadyHours.P10 - sensitivity.PlannedHours)
        .Append(sensitivity.ReadyHours.P90 - sensitivity.PlannedHours)
        .Max(hours => Math.Abs(hours ?? 0));

    private TornadoRow TogetherRow(double top, Sensitivity sensitivity) => new(
        top, words["tornado.together"], words["tornado.together.range"],
        End(sensitivity.ReadyHours.P10 - sensitivity.PlannedHours), End(sensitivity.ReadyHours.P90 - sensitivity.PlannedHours));

    private TornadoRow Row(double top, InputSensitivity bar)
    {
        var low = ShownNumber.Of(bar.LowValue, bar.Unit);
        var high = ShownNumber.Of(bar.HighValue, bar.Unit);
        return new(
            top, SensitivityWording.Name(words, bar.Code), words.Say("figure.from_to", ("low", low.RoundedValue), ("high", high.Rounded(words))),
            End(bar.ChangeAtLowHours), End(bar.ChangeAtHighHours));
    }

    private TornadoEnd? End(double? change) => change switch
    {
        null => new(scale.AtHigh, SensitivityWording.Change(words, null)),
        { } hours when Math.Abs(hours) < SeenHours => null,
        { } hours => new(scale.Place(hours), SensitivityWording.Change(words, hours)),
    };
}
