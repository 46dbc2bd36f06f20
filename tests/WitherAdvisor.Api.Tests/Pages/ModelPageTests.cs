using WitherAdvisor.Api.ModelCard;
using WitherAdvisor.Api.Pages.Model;
using WitherAdvisor.Documentation;
using WitherAdvisor.Sensitivities;
using WitherAdvisor.Words;
using WitherAdvisor.Words.Model;
using WitherAdvisor.Words.Plans;
using Xunit;

namespace WitherAdvisor.Api.Tests.Pages;

public sealed class ModelPageTests : IDisposable
{
    private readonly PageHost host = new();

    [Fact]
    public async Task The_page_tells_what_the_model_does_not_know_and_draws_what_matters_most()
    {
        string html = await host.Page("/model");
        string page = PageText.Read(html);

        Assert.Contains("What the numbers rest on", page, StringComparison.Ordinal);
        Assert.All(Unknown.All, unknown => Assert.Contains(UnknownWording.Text(unknown.Code), page, StringComparison.Ordinal));
        Assert.All(ModelConstants.All, constant => Assert.Contains(ConstantWording.Meaning(constant.Code), page, StringComparison.Ordinal));
        Assert.Contains("id=\"tornado-rain-wet-title\"", html, StringComparison.Ordinal);
        Assert.Contains("id=\"tornado-dry-windy-title\"", html, StringComparison.Ordinal);
        Assert.DoesNotContain("<script", html, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain("style=", html, StringComparison.OrdinalIgnoreCase);
    }

    [Fact]
    public async Task The_first_page_leads_to_it() =>
        Assert.Contains("href=\"/model\"", await host.Page("/"), StringComparison.Ordinal);

    [Fact]
    public void Each_bar_lies_where_its_hours_are()
    {
        TornadoDrawing drawing = new("a", Made(("surface_water", -1, 2), ("airflow", 1, -1)), Wordbook.English);

        TornadoRow water = drawing.Rows[0];
        Assert.True(water.Low!.IsLeft && !water.High!.IsLeft);
        Assert.Equal(2 * water.Low.Width, water.High!.Width, 1e-9);
        Assert.Equal("−1.0 h", water.Low.Text);
        Assert.Equal("+2.0 h", water.High.Text);
        Assert.True(drawing.Rows[1].High!.IsLeft);
        Assert.True(water.High.X <= TornadoFrame.Middle + TornadoFrame.Reach);
    }

    [Fact]
    public void An_end_that_is_never_reached_runs_to_the_edge_and_says_so()
    {
        TornadoEnd end = new TornadoDrawing("a", Made(("cuticular_conductance", null, -1)), Wordbook.English).Rows[0].Low!;

        Assert.Equal(TornadoFrame.Middle + TornadoFrame.Reach, end.X);
        Assert.Equal("not reached", end.Text);
    }

    [Fact]
    public void What_moves_nothing_says_so() => Assert.True(new TornadoDrawing("a", Made(("night_air", 0, 0)), Wordbook.English).Rows[0].IsNothing);

    [Fact]
    public void Every_input_that_the_model_moves_has_words() => Assert.All(
        CardBatch.All.SelectMany(batch => batch.Sensitivity.Inputs), bar => Assert.Contains($"sensitivity.{bar.Code}", Wordbook.English.Texts.Keys));

    public void Dispose() => host.Dispose();

    private static Sensitivity Made(params (string Code, double? Low, double? High)[] changes) => new(
        10, new(9, 10, 11.5),
        [.. changes.Select(change => new InputSensitivity(
            change.Code, SensitivityReach.P10ToP90, "1", 0.1, 0.2, 0.3, 10, 10 + change.Low, 10 + change.High, null))]);
}
