using static WitherAdvisor.Store.Contract.Invented;

namespace WitherAdvisor.Store.Contract;

/// <summary>What was kept stays, and what was given up was never kept.</summary>
public abstract class LastingTests<TStore> : StoreSuite<TStore>
    where TStore : IStoreUnderTest, new()
{
    [Fact]
    public async Task What_was_kept_is_there_after_closing_and_opening_again()
    {
        await Store.WithTrough();
        await Store.Batches.Add(Batch("b1"), AdviceFor("a1", "b1"), onceOnly: false, Cancel);

        await Store.Reopen();

        Assert.Equal(Site("hill"), await Store.Sites.FindSite("hill", Cancel));
        Assert.Equal(Batch("b1"), await Store.Batches.Find("b1", Cancel));
        Assert.Equal(AdviceFor("a1", "b1").Kept, await Store.Batches.FindAdvice("a1", Cancel));
    }

    [Fact]
    public async Task A_caller_that_gave_up_keeps_nothing_and_holds_nobody_up()
    {
        await Assert.ThrowsAnyAsync<OperationCanceledException>(
            () => Store.Sites.PutSite(Site("hill"), new CancellationToken(canceled: true)));

        await Store.Sites.PutSite(Site("valley"), Cancel);

        Assert.Equal([Site("valley")], await Store.Sites.ListSites(Cancel));
    }
}
