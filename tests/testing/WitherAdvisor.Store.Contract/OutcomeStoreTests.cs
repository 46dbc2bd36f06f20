using WitherAdvisor.Loft.Kept;
using WitherAdvisor.Loft.Kept.Batches;
using WitherAdvisor.Loft.Kept.Outcomes;
using WitherAdvisor.Outcomes;
using WitherAdvisor.Spells;
using static WitherAdvisor.Store.Contract.Invented;

namespace WitherAdvisor.Store.Contract;

/// <summary>Outcomes, the log of a site, and imports.</summary>
public abstract class OutcomeStoreTests<TStore> : StoreSuite<TStore>
    where TStore : IStoreUnderTest, new()
{
    protected override async Task Prepare()
    {
        await Store.WithTrough("hill", "t1");
        await Store.WithTrough("valley", "t1");
    }

    [Fact]
    public async Task Every_field_of_an_outcome_comes_back()
    {
        await Batch("b1", Monday);
        StoredOutcome outcome = Full("b1");

        await Store.Outcomes.Put(outcome, Cancel);

        Assert.Equivalent(outcome, await Store.Outcomes.Find("b1", Cancel), strict: true);
    }

    [Fact]
    public async Task What_nobody_wrote_down_stays_unknown()
    {
        await Batch("b1", Monday);
        StoredOutcome empty = new("b1", new WitherOutcome(), Monday, null, []);

        await Store.Outcomes.Put(empty, Cancel);

        Assert.Equivalent(empty, await Store.Outcomes.Find("b1", Cancel), strict: true);
    }

    [Fact]
    public async Task A_changed_outcome_counts_and_the_former_ones_stay()
    {
        await Batch("b1", Monday);
        foreach (int hour in new[] { 1, 2, 3 })
        {
            await Store.Outcomes.Put(Full("b1") with { EnteredAt = Monday.AddHours(hour), EnteredBy = $"person {hour}" }, Cancel);
        }

        Assert.Equal("person 3", (await Store.Outcomes.Find("b1", Cancel))!.EnteredBy);
        Assert.Equal(["person 3", "person 2", "person 1"], (await Store.Outcomes.History("b1", Cancel)).Select(version => version.EnteredBy));
    }

    [Fact]
    public async Task An_outcome_of_no_batch_is_refused() =>
        await Assert.ThrowsAsync<ParentNotFoundException>(() => Store.Outcomes.Put(Full("nothing"), Cancel));

    [Fact]
    public async Task The_log_has_each_batch_once_with_its_newest_outcome_and_its_last_advice()
    {
        await Batch("later", Monday.AddHours(1));
        await Batch("first", Monday);
        await Batch("without outcome", Monday);
        await Batch("elsewhere", Monday, "valley");
        await Store.Batches.AddAdvice(Told("newer", "first"), Cancel);
        foreach (string id in new[] { "later", "first", "first", "elsewhere" })
        {
            await Store.Outcomes.Put(Full(id), Cancel);
        }

        List<LoggedOutcome> log = await Log(new());

        Assert.Equal(["first", "later"], log.Select(line => line.Batch.Id));
        Assert.Equal(("newer", "dry_windy", 8.5, 0.12), (log[0].Advice!.AdviceId, log[0].Advice!.Spell, log[0].Advice!.AdvisedHours, log[0].Advice!.SurfaceWaterKgPerKg));
        Assert.Equal("advice for later", log[1].Advice!.AdviceId);
        Assert.Equal(["later", "first"], (await Log(new(NewestFirst: true))).Select(line => line.Batch.Id));
    }

    [Fact]
    public async Task The_log_is_filtered_by_time_spell_and_cultivar()
    {
        await Batch("a", Monday, cultivar: "A");
        await Batch("b", Monday.AddHours(2), cultivar: "B");
        await Store.Batches.AddAdvice(Told("for b", "b"), Cancel);
        await Store.Outcomes.Put(Full("a"), Cancel);
        await Store.Outcomes.Put(Full("b"), Cancel);

        Assert.Equal(["b"], (await Log(new(From: Monday.AddHours(1)))).Select(line => line.Batch.Id));
        Assert.Equal(["a"], (await Log(new(To: Monday.AddHours(2)))).Select(line => line.Batch.Id));
        Assert.Equal(["a"], (await Log(new(Cultivar: "A"))).Select(line => line.Batch.Id));
        Assert.Equal(["b"], (await Log(new(Spell: SpellKind.DryWindy))).Select(line => line.Batch.Id));
    }

    [Fact]
    public async Task An_import_is_kept_whole_or_not_at_all()
    {
        StoredBatch past = Invented.Batch("past").LoadedAt(Monday) with { Ended = BatchEnd.Unloaded };
        bool Bring(IOutcomeImport import, bool keep)
        {
            import.Add(past);
            import.Add(Full("past"));
            import.Add(Filled<AdviceFigures>() with { BatchId = "past" });
            return keep;
        }

        Assert.False(await Store.Outcomes.Import("hill", import => Bring(import, keep: false), Cancel));
        Assert.Null(await Store.Batches.Find("past", Cancel));
        await Assert.ThrowsAsync<InvalidOperationException>(() =>
            Store.Outcomes.Import("hill", import => Bring(import, keep: true) ? throw new InvalidOperationException() : false, Cancel));
        Assert.Empty(await Log(new()));

        Assert.True(await Store.Outcomes.Import("hill", import => Bring(import, keep: true), Cancel));

        LoggedOutcome line = Assert.Single(await Log(new()));
        Assert.Equal(past, line.Batch);
        Assert.Equivalent(Filled<AdviceFigures>() with { BatchId = "past" }, line.Advice);
    }

    [Fact]
    public async Task An_import_finds_batches_by_id_and_by_what_a_paper_log_knows()
    {
        await Batch("b1", Monday);
        StoredBatch kept = (await Store.Batches.Find("b1", Cancel))!;
        KeptBatch? byId = null;
        KeptBatch? byLabel = null;
        KeptBatch? other = null;

        await Store.Outcomes.Preview("hill", import =>
        {
            byId = import.Find("b1");
            byLabel = import.Find("t1", Monday, kept.Batch.Label.Division, kept.Batch.Label.Field);
            other = import.Find("t1", Monday.AddMinutes(1), kept.Batch.Label.Division, kept.Batch.Label.Field);
        }, Cancel);

        Assert.Equal((kept, null), (byId!.Batch, byId.Outcome));
        Assert.Equal("b1", byLabel!.Batch.Id);
        Assert.Null(other);
    }

    [Fact]
    public async Task The_scales_of_a_site_keep_their_order_and_are_replaced_together()
    {
        TasterScale[] scales = [new("Strength", 0, 10), new("Briskness", 1, 5.5)];
        await Store.Outcomes.PutScales("hill", [new("Old", 0, 1)], Cancel);

        await Store.Outcomes.PutScales("hill", scales, Cancel);

        Assert.Equal(scales, await Store.Outcomes.ListScales("hill", Cancel));
        Assert.Empty(await Store.Outcomes.ListScales("valley", Cancel));
        await Assert.ThrowsAsync<ParentNotFoundException>(() => Store.Outcomes.PutScales("nowhere", scales, Cancel));
    }

    private static StoredOutcome Full(string batchId) => new(
        batchId,
        new WitherOutcome
        {
            AirSet = [new(0, 26.5, null, 7.2, 1), new(3, 25, 19, null, null)],
            AirMeasured = [new(0.5, 26.1, 19.4, null, 0.9)],
            Turns = 2,
            TurnedAtHours = [2, 4.25],
            WitheredWeightKg = 560.1,
            OvenMoistureWetBasis = 0.6,
            Layers = new(0.58, 0.6, 0.63),
            SampleWeighings = [new(4, 0.8)],
            Verdict = WitherVerdict.Over,
            Evenness = EvennessVerdict.Uneven,
            Marks = [new("Briskness", 7.5)],
            Faults = ["red leaf, \"top\"", "=1+1"],
            Weather = "wet",
            Note = "Ünïcødé 茶",
        },
        Monday.AddHours(12).ToUniversalTime(), "the night's maker", ["hours_unusual"]);

    private static MadeAdvice Told(string id, string batchId)
    {
        MadeAdvice advice = AdviceFor(id, batchId, Monday.AddYears(1));
        return advice with
        {
            Figures = advice.Figures with { Spell = "dry_windy", AdvisedHours = 8.5, SurfaceWaterKgPerKg = 0.12 },
        };
    }

    private async Task<List<LoggedOutcome>> Log(OutcomeFilter filter)
    {
        List<LoggedOutcome> lines = [];
        await foreach (LoggedOutcome line in Store.Outcomes.Log("hill", filter, Cancel))
        {
            lines.Add(line);
        }

        return lines;
    }

    private Task<AddedBatch> Batch(string id, DateTimeOffset loadedAt, string siteId = "hill", string? cultivar = null)
    {
        StoredBatch batch = Invented.Batch(id, siteId).LoadedAt(loadedAt);
        batch = batch with { Batch = batch.Batch with { Label = batch.Batch.Label with { Cultivar = cultivar } } };
        return Store.Batches.Add(batch, AdviceFor($"advice for {id}", id), onceOnly: false, Cancel);
    }
}
