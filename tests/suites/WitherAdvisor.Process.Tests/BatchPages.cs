using System.Text.RegularExpressions;
using Microsoft.Playwright;

namespace WitherAdvisor.Process.Tests;

/// <summary>What a person does on the pages.</summary>
public static class BatchPages
{
    public const string NewBatch = $"/sites/{InventedLoft.Site}/batches/new";

    /// <summary>Fills in the form by its labels, asks for advice, and waits for it.</summary>
    public static async Task EnterRainWetBatch(IPage page)
    {
        await page.GotoAsync(NewBatch);
        await page.GetByRole(AriaRole.Radio, new() { Name = "Trough 1" }).CheckAsync();
        await TextBox(page, "Division").FillAsync("Invented division");
        await TextBox(page, "Field").FillAsync("Field 7");
        await EnterTime(page, "Plucked from", "08:00");
        await EnterTime(page, "Plucked to", "15:30");
        await EnterTime(page, "Loaded at", "17:00");
        await TextBox(page, "Green weight").FillAsync("1340");
        await page.GetByRole(AriaRole.Button, new() { Name = "Advise" }).ClickAsync();
        await Assertions.Expect(Heading(page, "Under the mesh")).ToBeVisibleAsync();
    }

    public static ILocator Heading(IPage page, string text) => page.GetByRole(AriaRole.Heading, new() { Name = text });

    /// <summary>A field to type into, by its label.</summary>
    public static ILocator TextBox(IPage page, string label) =>
        page.GetByRole(AriaRole.Textbox, new() { NameRegex = new($"^{Regex.Escape(label)}(?: needed)?$", RegexOptions.None, Patience.Longest) });

    private static async Task EnterTime(IPage page, string label, string clock)
    {
        await page.GetByLabel($"{label}, date").FillAsync("2026-06-19");
        await TextBox(page, label).FillAsync(clock);
    }
}
