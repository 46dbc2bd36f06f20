using Microsoft.Playwright;
using Xunit;

namespace WitherAdvisor.Process.Tests;

public sealed class WeatherPageTests(Loft loft)
{
    [Theory]
    [InlineData(WeatherPages.WetSpell, 360)]
    [InlineData(WeatherPages.WetSpell, 1100)]
    [InlineData(WeatherPages.BeforeAnythingWasRead, 360)]
    public async Task The_weather_shows_without_scrolling_sideways_even_unfolded(string path, int width)
    {
        IPage page = await loft.OpenOnPhone();
        await page.SetViewportSizeAsync(width, 800);
        await page.GotoAsync(path);
        await WeatherPages.OpenAllDetails(page);

        Assert.Equal(width, await page.EvaluateAsync<int>("document.documentElement.scrollWidth"));
    }

    [Fact]
    public async Task A_file_with_a_bad_row_is_sent_its_good_rows_kept_and_the_bad_one_told()
    {
        IPage page = await loft.OpenOnPhone(javaScript: false);
        await page.GotoAsync(WeatherPages.Upload);
        await page.GetByLabel("CSV file").SetInputFilesAsync(new FilePayload
        {
            Name = "invented.csv",
            MimeType = "text/csv",
            Buffer = System.Text.Encoding.UTF8.GetBytes("time,dry_bulb_c\n2025-01-01T07:00:00Z,19\n2025-01-01T08:00:00Z,190\n"),
        });
        await page.GetByRole(AriaRole.Radio, new() { Name = "the good rows" }).CheckAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Send the file" }).ClickAsync();

        await Assertions.Expect(BatchPages.Heading(page, "1 row kept, 1 refused")).ToBeVisibleAsync();
        await Assertions.Expect(page.GetByRole(AriaRole.Alert)).ToContainTextAsync("line 3, column dry_bulb_c");
        await Assertions.Expect(page.GetByRole(AriaRole.Alert)).ToContainTextAsync("190");
        Assert.Equal(Browser.PhoneWidth, await page.EvaluateAsync<int>("document.documentElement.scrollWidth"));
    }

    [Fact]
    public async Task Without_seeing_the_pictures_a_person_hears_what_they_show()
    {
        IPage page = await loft.OpenOnPhone(javaScript: false);
        await page.GotoAsync(WeatherPages.WetSpell);

        ILocator night = page.GetByRole(AriaRole.Img, new() { Name = "The last 12 hours and the coming night" });
        await Assertions.Expect(night).ToBeVisibleAsync();
        await Assertions.Expect(page.GetByRole(AriaRole.Img, new() { Name = "The last 14 days and the coming night" })).ToBeVisibleAsync();
        await Assertions.Expect(page.GetByRole(AriaRole.Row, new() { Name = "Thu 18 Jun wet" })).ToBeVisibleAsync();
    }
}
