using WitherAdvisor.Leaf;
using WitherAdvisor.Loft.Kept;
using WitherAdvisor.Loft.Kept.Batches;
using static WitherAdvisor.Store.Contract.Invented;

namespace WitherAdvisor.Store.Contract;

/// <summary>What a store has to keep of batches and their advice.</summary>
public abstract class BatchStoreTests<TStore> : StoreSuite<TStore>
    where TStore : IStoreUnderTest, new()
{
    protected override async Task Prepare()
    {
        await Store.WithTrough("hill", "t1");
        await Store.WithTrough("hill", "t2");
        await Store.WithTrough("valley", "t1");
    }

    [Fact]
    public async Task Every_field_of_a_batch_and_its_advice_comes_back()
    {
        var filled = Filled<StoredBatch>() with { SiteId = "hill", TroughId = "t1" };
        var batch = filled with { MixedIntoId = filled.Id };
        var advice = AdviceFor("a1", batch.Id);

        await Store.Batches.Add(batch, advice, onceOnly: false, Cancel);

        Assert.Equal(batch, await Store.Batches.Find(batch.Id, Cancel));
        Assert.Equal(advice.Kept, await Store.Batches.FindAdvice("a1", Cancel));
        Assert.Equal(advice.Figures, await Store.Outcomes.LastAdvice(batch.Id, Cancel));
    }

    [Fact]
    public async Task What_nobody_said_of_a_batch_stays_unknown()
    {
        var sparse = Sparse<StoredBatch>() with { SiteId = "hill", TroughId = "t1" };

        await Add(sparse);

        var found = await Store.Batches.Find(sparse.Id, Cancel);
        Assert.Equal(sparse, found);
        Assert.Equal(new LeafLabel(sparse.Batch.Label.Division, sparse.Batch.Label.Field, null, null, null), found!.Batch.Label);
    }

    [Fact]
    public async Task Every_choice_of_words_comes_back()
    {
        foreach (var feel in Enum.GetValues<SurfaceFeel>())
        {
            var batch = Batch(feel.ToString());
            await Add(batch with { Batch = batch.Batch with { SurfaceFeel = feel } });
            Assert.Equal(feel, (await Store.Batches.Find(feel.ToString(), Cancel))!.Batch.SurfaceFeel);
        }
    }

    [Fact]
    public async Task Times_come_back_as_the_same_instants_with_offset_zero()
    {
        await Add(Batch("b1").LoadedAt(Monday));

        var found = await Store.Batches.Find("b1", Cancel);

        Assert.Equal(TimeSpan.FromMinutes(330), Monday.Offset);
        Assert.Equal(Monday, found!.Batch.LoadedAt);
        Assert.Equal(TimeSpan.Zero, found.Batch.LoadedAt.Offset);
    }

    [Fact]
    public async Task Advice_texts_come_back_byte_for_byte_however_long()
    {
        var json = string.Concat(Enumerable.Repeat("{\"dryBulbC\":0.30000000000000004,\"e\":\"é茶\\u0000\"}\r\n", 50_000));
        await Add(Batch("b1"));

        await Store.Batches.AddAdvice(WithInputs(AdviceFor("long", "b1"), json), Cancel);

        Assert.Equal(json, (await Store.Batches.FindAdvice("long", Cancel))!.InputsJson);
    }

    [Fact]
    public async Task A_batch_is_not_kept_when_its_advice_cannot_be()
    {
        await Store.Batches.Add(Batch("b1"), AdviceFor("a1", "b1"), onceOnly: false, Cancel);

        await Assert.ThrowsAnyAsync<Exception>(() => Store.Batches.Add(Batch("b2"), AdviceFor("a1", "b2"), onceOnly: false, Cancel));

        Assert.Null(await Store.Batches.Find("b2", Cancel));
        Assert.Equal("b1", (await Store.Batches.FindAdvice("a1", Cancel))!.BatchId);
    }

    [Fact]
    public async Task A_batch_is_not_kept_with_the_advice_of_another()
    {
        await Assert.ThrowsAsync<ArgumentException>(() => Store.Batches.Add(Batch("b1"), AdviceFor("a1", "b2"), onceOnly: false, Cancel));

        Assert.Null(await Store.Batches.Find("b1", Cancel));
    }

    [Theory]
    [InlineData("nowhere", "t1")]
    [InlineData("valley", "t2")]
    public async Task A_batch_on_an_unknown_trough_is_refused_by_name(string siteId, string troughId)
    {
        var refusal = await Assert.ThrowsAsync<ParentNotFoundException>(() => Add(Batch("b1", siteId, troughId)));

        Assert.Contains($"trough '{troughId}' of site '{siteId}'", refusal.Message, StringComparison.Ordinal);
        Assert.Null(await Store.Batches.Find("b1", Cancel));
        Assert.Null(await Store.Batches.FindAdvice("advice for b1", Cancel));
    }

    [Fact]
    public async Task Advice_for_an_unknown_batch_is_refused_by_name()
    {
        var refusal = await Assert.ThrowsAsync<ParentNotFoundException>(
            () => Store.Batches.AddAdvice(AdviceFor("a1", "nothing"), Cancel));

        Assert.Contains("'nothing'", refusal.Message, StringComparison.Ordinal);
        Assert.Null(await Store.Batches.FindAdvice("a1", Cancel));
    }

    [Fact]
    public async Task Batches_are_listed_newest_first_and_no_more_than_asked_for()
    {
        foreach (var hour in new[] { 2, 4, 1, 3 })
        {
            await Add(Batch($"b{hour}") with { CreatedAt = Monday.AddHours(hour) });
        }

        await Add(Batch("elsewhere", "valley"));

        Assert.Equal(["b4", "b3", "b2"], Ids(await Store.Batches.List("hill", most: 3, Cancel)));
        Assert.Equal(["b4", "b3", "b2", "b1"], Ids(await Store.Batches.List("hill", most: int.MaxValue, Cancel)));
        Assert.Empty(await Store.Batches.List("nowhere", most: 3, Cancel));
    }

    [Theory]
    [InlineData(0)]
    [InlineData(-1)]
    public async Task A_list_of_no_length_is_a_mistake_of_the_caller(int most) =>
        await Assert.ThrowsAsync<ArgumentOutOfRangeException>(() => Store.Batches.List("hill", most, Cancel));

    [Fact]
    public async Task Advice_is_listed_newest_first_and_not_without_end()
    {
        await Store.Batches.Add(Batch("b1"), AdviceFor("first", "b1", Monday), onceOnly: false, Cancel);
        for (var minute = 1; minute <= IBatchStore.MostListed; minute++)
        {
            await Store.Batches.AddAdvice(AdviceFor($"a{minute}", "b1", Monday.AddMinutes(minute)), Cancel);
        }

        await Add(Batch("b2"));

        var ids = (await Store.Batches.ListAdvice("b1", Cancel)).Select(advice => advice.Id);

        Assert.Equal(Enumerable.Range(1, IBatchStore.MostListed).Reverse().Select(minute => $"a{minute}"), ids);
    }

    [Fact]
    public async Task Leaf_lies_on_a_trough_from_loading_until_it_is_unloaded()
    {
        await Add(Batch("b1").LoadedAt(Monday));
        Assert.True(await Store.Batches.MarkUnloaded("b1", Monday.AddHours(12), Cancel));

        Assert.Empty(await OnTrough(Monday.AddMilliseconds(-1)));
        Assert.Equal(["b1"], await OnTrough(Monday));
        Assert.Equal(["b1"], await OnTrough(Monday.AddHours(11.5).ToOffset(TimeSpan.FromHours(-7))));
        Assert.Empty(await OnTrough(Monday.AddHours(12)));
    }

    [Fact]
    public async Task Leaf_nobody_unloaded_still_lies_there_and_other_troughs_do_not_count()
    {
        await Add(Batch("older").LoadedAt(Monday));
        await Add(Batch("newer").LoadedAt(Monday.AddHours(1)));
        await Add(Batch("beside", "hill", "t2").LoadedAt(Monday));
        await Add(Batch("elsewhere", "valley").LoadedAt(Monday));

        Assert.Equal(["newer", "older"], await OnTrough(Monday.AddYears(1)));
    }

    [Fact]
    public async Task A_batch_is_unloaded_once()
    {
        await Add(Batch("b1"));

        Assert.True(await Store.Batches.MarkUnloaded("b1", Monday.AddHours(9), Cancel));
        Assert.False(await Store.Batches.MarkUnloaded("b1", Monday.AddHours(10), Cancel));
        Assert.False(await Store.Batches.MarkUnloaded("nothing", Monday, Cancel));

        Assert.Equal(Monday.AddHours(9), (await Store.Batches.Find("b1", Cancel))!.UnloadedAt);
    }

    [Fact]
    public async Task A_batch_ends_in_one_way_with_its_reason_and_in_no_other_afterwards()
    {
        await Add(Batch("lost"));
        await Add(Batch("little"));
        await Add(Batch("large"));

        Assert.True(await Store.Batches.MarkCancelled("lost", Monday, "the fan failed", Cancel));
        Assert.True(await Store.Batches.MarkMixed("little", Monday, "large", "too little leaf", null, Cancel));
        Assert.False(await Store.Batches.MarkUnloaded("lost", Monday, Cancel));
        Assert.False(await Store.Batches.MarkMixed("lost", Monday, "large", "late", null, Cancel));
        Assert.False(await Store.Batches.MarkCancelled("little", Monday, "late", Cancel));

        var lost = (await Store.Batches.Find("lost", Cancel))!;
        Assert.Equal((BatchEnd.Cancelled, "the fan failed", null), (lost.Ended, lost.EndReason, lost.MixedIntoId));
        var little = (await Store.Batches.Find("little", Cancel))!;
        Assert.Equal((BatchEnd.Mixed, "too little leaf", "large"), (little.Ended, little.EndReason, little.MixedIntoId));
    }

    [Fact]
    public async Task A_batch_cannot_be_mixed_into_one_that_is_not_kept()
    {
        await Add(Batch("b1"));

        await Assert.ThrowsAsync<ParentNotFoundException>(() => Store.Batches.MarkMixed("b1", Monday, "nothing", "why", null, Cancel));

        Assert.True((await Store.Batches.Find("b1", Cancel))!.IsRunning);
    }

    [Fact]
    public async Task A_batch_of_the_past_whose_end_nobody_knows_lies_on_no_trough()
    {
        await Add(Batch("b1").LoadedAt(Monday) with { Ended = BatchEnd.Unloaded });

        Assert.Empty(await OnTrough(Monday.AddHours(1)));
    }

    [Fact]
    public async Task What_is_not_there_is_null_or_an_empty_list()
    {
        Assert.Null(await Store.Batches.Find("nothing", Cancel));
        Assert.Null(await Store.Batches.FindAdvice("nothing", Cancel));
        Assert.Empty(await Store.Batches.ListAdvice("nothing", Cancel));
        Assert.Empty(await OnTrough(Monday));
    }

    [Fact]
    public async Task Each_of_batches_that_come_at_once_sees_those_before_it()
    {
        AddedBatch[] added = await Task.WhenAll(Enumerable.Range(0, 8).Select(number => Task.Run(
            () => Store.Batches.Add(Batch($"b{number}").LoadedAt(Monday), AdviceFor($"a{number}", $"b{number}"), onceOnly: false, Cancel))));

        Assert.Equal(Enumerable.Range(0, 8), added.Select(one => one.LyingThere.Count).Order());
        Assert.All(added, one => Assert.Null(one.Same));
    }

    [Fact]
    public async Task The_very_same_batch_at_once_is_kept_once_where_that_is_wanted()
    {
        AddedBatch[] added = await Task.WhenAll(Enumerable.Range(0, 8).Select(number => Task.Run(
            () => Store.Batches.Add(Batch($"b{number}").LoadedAt(Monday), AdviceFor($"a{number}", $"b{number}"), onceOnly: true, Cancel))));

        StoredBatch kept = Assert.Single(await Store.Batches.List("hill", most: 10, Cancel));
        Assert.Equal(7, added.Count(one => one.Same?.Id == kept.Id));
    }

    private static MadeAdvice WithInputs(MadeAdvice advice, string json) => advice with { Kept = advice.Kept with { InputsJson = json } };

    private Task<AddedBatch> Add(StoredBatch batch) => Store.Batches.Add(batch, AdviceFor($"advice for {batch.Id}", batch.Id), onceOnly: false, Cancel);

    private async Task<IEnumerable<string>> OnTrough(DateTimeOffset at) =>
        Ids(await Store.Batches.OnTrough("hill", "t1", at, Cancel));

    private static IEnumerable<string> Ids(IEnumerable<StoredBatch> batches) => batches.Select(batch => batch.Id);
}
