using Microsoft.Playwright;

namespace WitherAdvisor.Process.Tests;

/// <summary>Where a person looks at the weather.</summary>
public static class WeatherPages
{
    private const string Weather = $"/sites/{InventedLoft.Site}/weather";

    public const string Upload = $"{Weather}/upload";

    /// <summary>As the rain-wet batch of the invented estate is loaded.</summary>
    public const string WetSpell = $"{Weather}?at=2026-06-19T17:00:00%2B05:30";

    /// <summary>Weeks before its first reading.</summary>
    public const string BeforeAnythingWasRead = $"{Weather}?at=2026-03-01T17:00:00%2B05:30";

    /// <summary>Unfolds what a page keeps folded.</summary>
    public static async Task OpenAllDetails(IPage page)
    {
        foreach (ILocator summary in await page.Locator("summary").AllAsync())
        {
            await summary.ClickAsync();
        }
    }
}
