using Deque.AxeCore.Commons;
using Deque.AxeCore.Playwright;
using Microsoft.Playwright;
using Xunit;

namespace WitherAdvisor.Process.Tests;

public sealed class AccessibilityTests(Loft loft)
{
    [Theory]
    [InlineData("/", ColorScheme.Light)]
    [InlineData("/", ColorScheme.Dark)]
    [InlineData("/model", ColorScheme.Light)]
    [InlineData("/model", ColorScheme.Dark)]
    [InlineData(BatchPages.NewBatch, ColorScheme.Light)]
    [InlineData(BatchPages.NewBatch, ColorScheme.Dark)]
    [InlineData($"/sites/{InventedLoft.Site}/weather/new", ColorScheme.Light)]
    [InlineData($"/sites/{InventedLoft.Site}/weather/new", ColorScheme.Dark)]
    [InlineData(WeatherPages.Upload, ColorScheme.Light)]
    [InlineData(WeatherPages.Upload, ColorScheme.Dark)]
    [InlineData(WeatherPages.WetSpell, ColorScheme.Light)]
    [InlineData(WeatherPages.WetSpell, ColorScheme.Dark)]
    [InlineData(WeatherPages.BeforeAnythingWasRead, ColorScheme.Light)]
    [InlineData(WeatherPages.BeforeAnythingWasRead, ColorScheme.Dark)]
    [InlineData($"/sites/{InventedLoft.Site}/outcomes", ColorScheme.Light)]
    [InlineData($"/sites/{InventedLoft.Site}/outcomes", ColorScheme.Dark)]
    [InlineData($"/sites/{InventedLoft.Site}/outcomes/import", ColorScheme.Light)]
    [InlineData($"/sites/{InventedLoft.Site}/calibration", ColorScheme.Light)]
    [InlineData($"/sites/{InventedLoft.Site}/calibration", ColorScheme.Dark)]
    [InlineData($"/sites/{InventedLoft.Site}/season", ColorScheme.Light)]
    [InlineData($"/sites/{InventedLoft.Site}/season", ColorScheme.Dark)]
    public async Task Axe_finds_nothing_against_a_page(string path, ColorScheme colours)
    {
        IPage page = await loft.OpenOnPhone(colours);
        await page.GotoAsync(path);
        await WeatherPages.OpenAllDetails(page);

        await AssertNoViolations(page);
    }

    [Theory]
    [InlineData(ColorScheme.Light)]
    [InlineData(ColorScheme.Dark)]
    public async Task Axe_finds_nothing_against_the_advice(ColorScheme colours)
    {
        IPage page = await loft.OpenOnPhone(colours);
        await BatchPages.EnterRainWetBatch(page);

        await AssertNoViolations(page);
    }

    private static async Task AssertNoViolations(IPage page)
    {
        AxeResult found = await page.RunAxe();

        Assert.NotEmpty(found.Passes);
        Assert.True(found.Violations.Length == 0, string.Join('\n', found.Violations.Select(violation =>
            $"{violation.Id}: {violation.Help} at {string.Join(", ", violation.Nodes.Select(node => node.Html))}")));
    }
}
