using System.Globalization;
using System.Xml.Linq;
using WitherAdvisor.Api.Pages.Curve;
using WitherAdvisor.Plans;
using WitherAdvisor.Words;
using WitherAdvisor.Words.Units;
using Xunit;

namespace WitherAdvisor.Api.Tests.Pages;

public sealed class CurveDrawingTests
{
    private const double Near = 1e-9;

    private static CurveDrawing Drawing(IReadOnlyList<CurvePoint>? curve = null, IReadOnlyList<double>? turns = null) => new(
        curve ?? Sample.Advised.Curve, turns ?? Sample.Plan.TurnHours, 0.6, Sample.LoadedAt, new WallClock("Asia/Colombo"), Wordbook.English);

    [Fact]
    public void Every_point_lies_within_its_panel()
    {
        CurveDrawing drawing = Drawing();

        Assert.All(drawing.MoistureLines.SelectMany(line => line.Points), point =>
        {
            Assert.InRange(point.X, CurveFrame.Left, CurveFrame.Right);
            Assert.InRange(point.Y, CurveFrame.MoistureTop, CurveFrame.MoistureBottom);
        });
        Assert.All(drawing.WaterLine.Points, point => Assert.InRange(point.Y, CurveFrame.WaterTop, CurveFrame.WaterBottom));
    }

    [Fact]
    public void Turns_stand_at_their_hours_on_the_way_from_loading_to_the_stop()
    {
        CurveDrawing drawing = Drawing();

        double width = CurveFrame.Right - CurveFrame.Left;
        Assert.Equal(6, drawing.Turns.Count);
        Assert.All(drawing.Turns.Zip(Sample.Plan.TurnHours), pair =>
            Assert.Equal(CurveFrame.Left + pair.Second / 12.4 * width, pair.First.At, Near));
        Assert.Equal(["18:10", "20:10", "22:10", "00:10", "02:10", "04:10"], drawing.Turns.Select(turn => turn.Text));
    }

    [Fact]
    public void Drier_leaf_lies_lower_and_the_target_between_its_neighbours()
    {
        CurveDrawing drawing = Drawing();

        CurveLine mean = drawing.MoistureLines.Single(line => line.Name == "mean");
        Assert.True(mean.Points[0].Y < mean.Points[^1].Y);
        Assert.Equal(drawing.TargetY, mean.Points[^1].Y, 1.0);
        CurveMark sixty = drawing.MoistureMarks.Single(mark => mark.Text == "60");
        Assert.Equal(sixty.At, drawing.TargetY, Near);
    }

    [Fact]
    public void The_axes_tell_the_hours_and_the_sites_clock_at_the_same_places()
    {
        CurveDrawing drawing = Drawing();

        Assert.Equal(["0", "2", "4", "6", "8", "10", "12"], drawing.HourMarks.Select(mark => mark.Text));
        Assert.Equal(["16:10", "18:10", "20:10", "22:10", "00:10", "02:10", "04:10"], drawing.ClockMarks.Select(mark => mark.Text));
        Assert.Equal(drawing.HourMarks.Select(mark => mark.At), drawing.ClockMarks.Select(mark => mark.At));
    }

    [Fact]
    public void Labels_at_the_ends_of_lines_never_stand_on_one_another()
    {
        double[] places = [.. Drawing().MoistureLines.Select(line => line.LabelY).Order()];

        Assert.All(places.Zip(places.Skip(1)), pair => Assert.True(pair.Second - pair.First >= CurveFrame.LabelHeight - Near));
        Assert.All(places, place => Assert.InRange(place, CurveFrame.MoistureTop, CurveFrame.MoistureBottom));
    }

    [Fact]
    public void Labels_that_crowd_at_the_bottom_are_pushed_up()
    {
        IReadOnlyList<double> places = CurveLabels.Spread([99, 99, 98, 20], 10, 0, 100);

        Assert.Equal([100 - 10, 100, 100 - 20, 20], places);
    }

    [Fact]
    public void The_curve_is_told_to_those_who_do_not_see_it() => Assert.Equal(
        "In 12.4 h the whole bed goes from 83.3 % to 60.0 % moisture (wet basis); at the stop the bottom has 60.3 %, the middle 60.0 % "
            + "and the top 59.7 %. Water on the leaf starts at 20 % of its weight and is gone after 4.5 h. "
            + "Turned at 18:10, 20:10, 22:10, 00:10, 02:10, 04:10.",
        Drawing().Description);

    [Theory]
    [InlineData(0.3)]
    [InlineData(6)]
    [InlineData(18)]
    [InlineData(30)]
    public void Short_and_long_withers_keep_within_the_frame_with_a_readable_axis(double hours)
    {
        CurvePoint[] curve = [new(0, 0.78, 0.78, 0.78, 0.78, 0, 1000, 20), new(hours, 0.6, 0.6, 0.6, 0.6, 0, 500, 24)];

        CurveDrawing drawing = Drawing(curve, [hours / 2]);

        Assert.InRange(drawing.HourMarks.Count, 2, 7);
        Assert.All(drawing.HourMarks, mark => Assert.InRange(mark.At, CurveFrame.Left, CurveFrame.Right + Near));
        Assert.All(drawing.MoistureLines.SelectMany(line => line.Points), point => Assert.InRange(point.X, CurveFrame.Left, CurveFrame.Right));
    }

    [Fact]
    public async Task The_drawing_is_sound_xml_with_all_of_it_inside_the_view_box()
    {
        string svg = await PageText.Html<WitherCurve>(new { Drawing = Drawing() });

        XElement root = XElement.Parse(svg);
        Assert.Equal($"0 0 {CurveFrame.Width} {CurveFrame.Height}", root.Attribute("viewBox")?.Value);
        XAttribute[] numbers = [.. root.Descendants().Attributes().Where(attribute => attribute.Name.LocalName is "x" or "y" or "x1" or "x2" or "y1" or "y2")];
        Assert.NotEmpty(numbers);
        Assert.All(numbers, number => Assert.InRange(
            double.Parse(number.Value, CultureInfo.InvariantCulture), 0, number.Name.LocalName[0] == 'x' ? CurveFrame.Width : CurveFrame.Height));
        Assert.Equal(["bottom", "mean", "middle", "top", "water"], root.Descendants("polyline").Select(line => line.Attribute("class")!.Value["line ".Length..]).Order());
        Assert.NotEmpty(root.Element("title")!.Value);
        Assert.StartsWith("In 12.4 h", root.Element("desc")!.Value, StringComparison.Ordinal);
    }
}
