using System.Text;
using System.Text.Json.Nodes;
using Deque.AxeCore.Commons;
using Deque.AxeCore.Playwright;
using Microsoft.Playwright;
using Xunit;

namespace WitherAdvisor.Process.Tests;

/// <summary>From an unloaded batch to the log, on a phone without JavaScript.</summary>
public sealed class OutcomePagesTests(Loft loft)
{
    [Fact]
    public async Task What_came_of_a_batch_is_entered_on_a_phone_and_stands_in_the_log()
    {
        IPage page = await loft.OpenOnPhone(javaScript: false);
        await BatchPages.EnterRainWetBatch(page);
        await page.GetByText("It came off at another time, or it was cancelled or mixed").ClickAsync();
        await page.GetByLabel("Off the trough at, date").FillAsync("2026-06-20");
        await BatchPages.TextBox(page, "Off the trough at").FillAsync("05:30");
        await page.GetByRole(AriaRole.Button, new() { Name = "Off the trough at that time" }).ClickAsync();
        await page.GetByRole(AriaRole.Link, new() { Name = "Outcome" }).ClickAsync();

        await BatchPages.TextBox(page, "Withered weight").FillAsync("620");
        await page.GetByRole(AriaRole.Radio, new() { Name = "right" }).CheckAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Save the outcome" }).ClickAsync();
        await Assertions.Expect(page.GetByText("46.3 %")).ToBeVisibleAsync();

        await page.GetByRole(AriaRole.Link, new() { Name = "The log" }).ClickAsync();
        await Assertions.Expect(page.GetByRole(AriaRole.Cell, new() { Name = "46.3 %" }).First).ToBeVisibleAsync();
    }

    [Theory]
    [InlineData(ColorScheme.Light)]
    [InlineData(ColorScheme.Dark)]
    public async Task Axe_finds_nothing_against_the_pages_of_a_batch_of_the_past_and_none_scrolls_sideways(ColorScheme colours)
    {
        IPage page = await loft.OpenOnPhone(colours);
        Uri import = new($"/v1/sites/{InventedLoft.Site}/outcomes/import?mode=take", UriKind.Relative);
        using StringContent log = new(LogOfPast.Of(40), Encoding.UTF8, "text/csv");
        using HttpResponseMessage taken = await loft.Service.Http.PostAsync(import, log, TestContext.Current.CancellationToken);
        Assert.True(taken.IsSuccessStatusCode, await taken.Content.ReadAsStringAsync(TestContext.Current.CancellationToken));
        JsonNode batches = JsonNode.Parse(await loft.Service.Http.GetStringAsync(
            new Uri($"/v1/sites/{InventedLoft.Site}/batches", UriKind.Relative), TestContext.Current.CancellationToken))!;
        string past = (string)batches.AsArray().First(batch => (bool)batch!["plucking_assumed"]!)!["id"]!;

        foreach (string path in new[] { $"/batches/{past}/outcome", $"/sites/{InventedLoft.Site}/outcomes", $"/sites/{InventedLoft.Site}/season" })
        {
            await page.GotoAsync(path);
            AxeResult found = await page.RunAxe();
            Assert.NotEmpty(found.Passes);
            Assert.True(found.Violations.Length == 0, path + "\n" + string.Join('\n', found.Violations.Select(violation =>
                $"{violation.Id}: {violation.Help} at {string.Join(", ", violation.Nodes.Select(node => node.Html))}")));
            Assert.Equal(Browser.PhoneWidth, await page.EvaluateAsync<int>("document.documentElement.scrollWidth"));
        }
    }
}
