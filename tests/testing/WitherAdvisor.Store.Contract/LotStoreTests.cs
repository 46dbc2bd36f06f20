using WitherAdvisor.Leaf;
using WitherAdvisor.Loft.Kept.Batches;
using static WitherAdvisor.Store.Contract.Invented;

namespace WitherAdvisor.Store.Contract;

/// <summary>What a store has to keep of batches that grow by lots.</summary>
public abstract class LotStoreTests<TStore> : StoreSuite<TStore>
    where TStore : IStoreUnderTest, new()
{
    protected override async Task Prepare() => await Store.WithTrough("hill", "t1");

    [Fact]
    public async Task A_batch_grows_by_lots_and_is_advised_in_the_same_write()
    {
        StoredBatch seen = await Added("b1");
        LeafLot more = Filled<LeafLot>(start: 500);
        Batch grown = seen.Batch.WithLots(lots => [.. lots, more]);

        Assert.True(await Store.Batches.ChangeLeaf(new(seen, grown, AdviceFor("again", "b1")), Cancel));

        StoredBatch now = (await Store.Batches.Find("b1", Cancel))!;
        Assert.Equal(seen with { Batch = grown }, now);
        Assert.Equal(3, now.Batch.Lots.Count);
        Assert.Equal("again", (await Store.Batches.FindAdvice("again", Cancel))!.Id);
        Assert.Equal(now, Assert.Single(await Store.Batches.List("hill", 5, Cancel)));
    }

    [Fact]
    public async Task What_nobody_said_of_an_expected_lot_stays_unknown()
    {
        StoredBatch seen = await Added("b1");
        var expected = new LeafLot(Monday.AddHours(3).ToUniversalTime(), 376, IsExpected: true);
        Batch grown = seen.Batch.WithLots(lots => [.. lots, expected]);

        Assert.True(await Store.Batches.ChangeLeaf(new(seen, grown, AdviceFor("again", "b1")), Cancel));

        Assert.Contains(expected, (await Store.Batches.Find("b1", Cancel))!.Batch.Lots);
    }

    [Fact]
    public async Task Of_two_changes_made_up_at_once_the_second_is_not_kept()
    {
        StoredBatch seen = await Added("b1");
        Batch one = seen.Batch.WithLots(lots => [.. lots, Filled<LeafLot>(start: 500)]);
        Batch other = seen.Batch.WithLots(lots => [.. lots, Filled<LeafLot>(start: 600)]);

        Assert.True(await Store.Batches.ChangeLeaf(new(seen, one, AdviceFor("one", "b1")), Cancel));
        Assert.False(await Store.Batches.ChangeLeaf(new(seen, other, AdviceFor("other", "b1")), Cancel));

        Assert.Equal(one, (await Store.Batches.Find("b1", Cancel))!.Batch);
        Assert.Null(await Store.Batches.FindAdvice("other", Cancel));
    }

    [Fact]
    public async Task A_batch_that_has_ended_does_not_grow()
    {
        StoredBatch seen = await Added("b1");
        await Store.Batches.MarkUnloaded("b1", Monday.AddHours(9), Cancel);
        StoredBatch ended = (await Store.Batches.Find("b1", Cancel))!;
        Batch grown = seen.Batch.WithLots(lots => [.. lots, Filled<LeafLot>(start: 500)]);

        Assert.False(await Store.Batches.ChangeLeaf(new(ended, grown, AdviceFor("again", "b1")), Cancel));

        Assert.Equal(ended, await Store.Batches.Find("b1", Cancel));
    }

    [Fact]
    public async Task Mixing_ends_one_batch_and_grows_the_other_or_does_neither()
    {
        StoredBatch little = await Added("little");
        StoredBatch large = await Added("large");
        Batch grown = large.Batch.WithLots(lots => [.. lots, .. little.Batch.Lots]);
        LeafChange stale = new(large with { EndReason = "not as it is" }, grown, AdviceFor("stale", "large"));

        Assert.False(await Store.Batches.MarkMixed("little", Monday.AddHours(9), "large", "why", stale, Cancel));
        Assert.True((await Store.Batches.Find("little", Cancel))!.IsRunning);

        Assert.True(await Store.Batches.MarkMixed(
            "little", Monday.AddHours(9), "large", "why", stale with { Seen = large, Advice = AdviceFor("grown", "large") }, Cancel));
        Assert.Equal(BatchEnd.Mixed, (await Store.Batches.Find("little", Cancel))!.Ended);
        Assert.Equal(grown, (await Store.Batches.Find("large", Cancel))!.Batch);
        Assert.NotNull(await Store.Batches.FindAdvice("grown", Cancel));
    }

    private async Task<StoredBatch> Added(string id)
    {
        await Store.Batches.Add(Batch(id), AdviceFor($"first of {id}", id), onceOnly: false, Cancel);
        return (await Store.Batches.Find(id, Cancel))!;
    }
}
