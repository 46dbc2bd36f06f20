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
