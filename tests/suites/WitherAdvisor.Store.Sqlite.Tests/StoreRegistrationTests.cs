using Microsoft.Extensions.DependencyInjection;
using WitherAdvisor.Loft.Kept.Batches;
using WitherAdvisor.Loft.Kept.Sites;
using WitherAdvisor.Loft.Kept.Weather;
using WitherAdvisor.Store.Contract;
using static WitherAdvisor.Store.Sqlite.Tests.TemporaryStore;

namespace WitherAdvisor.Store.Sqlite.Tests;

public sealed class StoreRegistrationTests : IDisposable
{
    private readonly TemporaryFolder folder = new();

    [Fact]
    public async Task A_host_gets_the_stores_on_one_file_made_when_first_asked_for()
    {
        var path = folder.File("wither.db");
        await using var provider = new ServiceCollection().AddWitherStore(path)
            .BuildServiceProvider(new ServiceProviderOptions { ValidateOnBuild = true, ValidateScopes = true });
        Assert.Empty(Directory.GetFiles(folder.Path));

        await provider.GetRequiredService<ISiteStore>().PutSite(Invented.Site("hill"), Cancel);
        await provider.GetRequiredService<ISiteStore>().PutTrough(Invented.Trough("hill", "t1"), Cancel);
        await provider.GetRequiredService<IBatchStore>().Add(Invented.Batch("b1"), Invented.AdviceFor("a1", "b1"), onceOnly: false, Cancel);
        await provider.GetRequiredService<IWeatherStore>().SaveRainTotals("hill", [], Invented.Monday, Cancel);
        Assert.Null(await provider.GetRequiredService<IFeedLog>().Last("hill", "valley-feed", Cancel));

        Assert.True(File.Exists(path));
        Assert.NotNull(await provider.GetRequiredService<IBatchStore>().Find("b1", Cancel));
    }

    public void Dispose() => folder.Dispose();
}
