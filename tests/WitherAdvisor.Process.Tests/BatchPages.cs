using Microsoft.Playwright;

namespace WitherAdvisor.Process.Tests;

/// <summary>What a person does on the pages.</summary>
public static class BatchPages
{
    public const string NewBatch = $"/sites/{InventedLoft.Site}/batches/new";

    /// <summary>Fills in the form by its labels and asks for advice.</summary>
    public static async Task EnterRainWetBatch(IPage page)
    {
        await page.GotoAsync(NewBatch);
        await page.GetByLabel("Trough 1").CheckAsync();
        await page.GetByLabel("Division").FillAsync("Invented division");
        await page.GetByLabel("Field").FillAsync("Field 7");
        await EnterTime(page, "Plucked from", "08:00");
        await EnterTime(page, "Plucked to", "15:30");
        await EnterTime(page, "Loaded at", "17:00");
        await page.GetByLabel("Green weight").FillAsync("1340");
        await page.GetByRole(AriaRole.Button, new() { Name = "Advise" }).ClickAsync();
    }

    private static async Task EnterTime(IPage page, string label, string clock)
    {
        await page.GetByLabel($"{label}, date").FillAsync("2026-06-19");
        await page.Locator($"input:below(label:has-text('{label}'))").First.FillAsync(clock);
    }
}
