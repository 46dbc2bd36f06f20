using System.Globalization;
using System.Text.RegularExpressions;
using Microsoft.Playwright;
using Xunit;

namespace WitherAdvisor.Process.Tests;

public sealed partial class FormTests(Loft loft)
{
    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public async Task A_batch_entered_on_a_phone_gives_the_three_numbers(bool javaScript)
    {
        IPage page = await loft.OpenOnPhone(javaScript: javaScript);

        await BatchPages.EnterRainWetBatch(page);

        Assert.InRange(await Number(page, "Under the mesh"), 20, 35);
        Assert.InRange(await Number(page, "To rolling"), 6, 20);
        Assert.InRange(await Number(page, "Turn"), 1, 6);
    }

    [Fact]
    public async Task A_phone_shows_form_and_advice_without_scrolling_sideways()
    {
        IPage page = await loft.OpenOnPhone();

        await page.GotoAsync(BatchPages.NewBatch);
        Assert.Equal(Browser.PhoneWidth, await WidthNeeded(page));
        await BatchPages.EnterRainWetBatch(page);
        Assert.Equal(Browser.PhoneWidth, await WidthNeeded(page));
    }

    [Fact]
    public async Task A_form_with_a_mistake_comes_back_filled_in_and_says_which_field()
    {
        IPage page = await loft.OpenOnPhone(javaScript: false);

        await page.GotoAsync(BatchPages.NewBatch);
        await BatchPages.TextBox(page, "Division").FillAsync("Invented division");
        await BatchPages.TextBox(page, "Green weight").FillAsync("a lot");
        await page.GetByRole(AriaRole.Button, new() { Name = "Advise" }).ClickAsync();

        Assert.Equal("Invented division", await BatchPages.TextBox(page, "Division").InputValueAsync());
        Assert.Equal("a lot", await BatchPages.TextBox(page, "Green weight").InputValueAsync());
        Assert.Equal("true", await BatchPages.TextBox(page, "Green weight").GetAttributeAsync("aria-invalid"));
    }

    private static Task<int> WidthNeeded(IPage page) => page.EvaluateAsync<int>("document.documentElement.scrollWidth");

    private static async Task<double> Number(IPage page, string heading)
    {
        string text = await page.Locator("section", new() { Has = BatchPages.Heading(page, heading) }).Locator(".number").InnerTextAsync();
        return double.Parse(FirstNumber().Match(text).Value, CultureInfo.InvariantCulture);
    }

    [GeneratedRegex(@"\d+(\.\d+)?", RegexOptions.ExplicitCapture, Patience.Milliseconds)]
    private static partial Regex FirstNumber();
}
