using Microsoft.Playwright;
using WitherAdvisor.Process.Tests;
using Xunit;

[assembly: AssemblyFixture(typeof(Loft))]

namespace WitherAdvisor.Process.Tests;

/// <summary>What every test stands in: the service running, the invented estate told to it, and a browser.</summary>
public sealed class Loft : IAsyncLifetime
{
    private readonly TemporaryFolder folder = new();
    private readonly Browser browser = new();

    public Loft() => Service = new(folder.Path);

    public RunningService Service { get; }

    /// <summary>A page on a phone, with nothing remembered.</summary>
    public Task<IPage> OpenOnPhone(ColorScheme colours = ColorScheme.Light, bool javaScript = true) =>
        browser.OpenOnPhone(Service.Address, colours, javaScript);

    public async ValueTask InitializeAsync()
    {
        await Service.Start();
        await new InventedLoft(Service).Tell();
        await browser.Launch();
    }

    public async ValueTask DisposeAsync()
    {
        await browser.DisposeAsync();
        await Service.DisposeAsync();
        folder.Dispose();
    }
}
