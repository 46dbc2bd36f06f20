namespace WitherAdvisor.Store.Contract;

/// <summary>What the suites of a port share: each test has a store of its own.</summary>
public abstract class StoreSuite<TStore> : IAsyncLifetime
    where TStore : IStoreUnderTest, new()
{
    protected static CancellationToken Cancel => TestContext.Current.CancellationToken;

    protected TStore Store { get; } = new();

    public async ValueTask InitializeAsync()
    {
        await Store.InitializeAsync();
        await Prepare();
    }

    public async ValueTask DisposeAsync()
    {
        await Store.DisposeAsync();
        GC.SuppressFinalize(this);
    }

    /// <summary>What every test of the suite finds in the store.</summary>
    protected virtual Task Prepare() => Task.CompletedTask;
}
