using Microsoft.Playwright;

namespace WitherAdvisor.Process.Tests;

/// <summary>A headless browser for all tests; each opens pages of its own, with nothing remembered.</summary>
public sealed class Browser : IAsyncDisposable
{
    public const int PhoneWidth = 390;
    private const int PhoneHeight = 844;

    private IPlaywright? playwright;
    private IBrowser? chromium;

    public async Task Launch()
    {
        Assertions.SetDefaultExpectTimeout(Patience.Milliseconds);
        playwright = await Playwright.CreateAsync();
        chromium = await playwright.Chromium.LaunchAsync(new()
        {
            ExecutablePath = InstalledChromium.Path,
            Args = InstalledChromium.Arguments,
            Timeout = Patience.Milliseconds,
        });
    }

    /// <summary>A page on a phone.</summary>
    public async Task<IPage> OpenOnPhone(Uri address, ColorScheme colours, bool javaScript)
    {
        IBrowserContext context = await chromium!.NewContextAsync(new()
        {
            BaseURL = address.ToString(),
            ViewportSize = new() { Width = PhoneWidth, Height = PhoneHeight },
            ColorScheme = colours,
            JavaScriptEnabled = javaScript,
        });
        context.SetDefaultTimeout(Patience.Milliseconds);
        return await context.NewPageAsync();
    }

    public async ValueTask DisposeAsync()
    {
        if (chromium is not null)
        {
            await chromium.DisposeAsync();
        }

        playwright?.Dispose();
    }
}
