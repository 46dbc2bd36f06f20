namespace WitherAdvisor.Store.Contract;

/// <summary>What has to be there before anything else can be kept.</summary>
public static class Furnishing
{
    /// <summary>A site and a trough for leaf to lie on.</summary>
    public static async Task WithTrough(this IStoreUnderTest store, string siteId = "hill", string troughId = "t1")
    {
        await store.Sites.PutSite(Invented.Site(siteId), TestContext.Current.CancellationToken);
        await store.Sites.PutTrough(Invented.Trough(siteId, troughId), TestContext.Current.CancellationToken);
    }
}
