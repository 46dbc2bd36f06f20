using WitherAdvisor.Loft.Kept;
using WitherAdvisor.Loft.Kept.Coefficients;
using static WitherAdvisor.Store.Sqlite.Tests.Invented;
using static WitherAdvisor.Store.Sqlite.Tests.TemporaryStore;

namespace WitherAdvisor.Store.Sqlite.Tests;

public sealed class SqliteRecalibrationsTests : IAsyncLifetime
{
    private static readonly DateTimeOffset Later = Monday.AddMinutes(5);

    private readonly TemporaryStore store = new();

    private IRecalibrationStore Jobs => store.Recalibrations;

    public async ValueTask InitializeAsync()
    {
        await store.WithTrough();
        await store.WithTrough("valley");
    }

    [Fact]
    public async Task One_goes_from_queued_to_running_to_done_with_its_proposal()
    {
        StoredRecalibration queued = (await Jobs.Queue("r1", "hill", Monday, Cancel))!;
        Assert.Equal(new StoredRecalibration("r1", "hill", "learned-1", Monday.ToUniversalTime()), queued);

        StoredRecalibration running = (await Jobs.BeginNext(Later, Cancel))!;
        Assert.Equal(queued with { Status = RecalibrationStatus.Running, StartedAt = Later.ToUniversalTime() }, running);
        Assert.True(await Jobs.Tell("r1", 0.25, "fitting", Cancel));
        Assert.Equal(running with { Share = 0.25, Step = "fitting" }, await Jobs.Find("r1", Cancel));

        Assert.True(await Jobs.Finish("r1", Later.AddMinutes(1), Proposal("learned-1"), Cancel));

        Assert.Equal(
            running with { Status = RecalibrationStatus.Done, Share = 1, Step = "fitting", EndedAt = Later.AddMinutes(1).ToUniversalTime() },
            await Jobs.Find("r1", Cancel));
        Assert.Equal(Proposal("learned-1"), await store.Coefficients.Find("hill", "learned-1", Cancel));
        Assert.Null(await store.Coefficients.Adopted("hill", Cancel));
    }

    [Fact]
    public async Task A_site_has_one_at_a_time_and_another_site_does_not_mind()
    {
        Assert.NotNull(await Jobs.Queue("r1", "hill", Monday, Cancel));

        Assert.Null(await Jobs.Queue("r2", "hill", Later, Cancel));
        Assert.NotNull(await Jobs.Queue("r3", "valley", Later, Cancel));

        Assert.Equal("r1", (await Jobs.BeginNext(Later, Cancel))!.Id);
        Assert.Null(await Jobs.Queue("r4", "hill", Later, Cancel));
        Assert.Equal("r3", (await Jobs.BeginNext(Later, Cancel))!.Id);
        Assert.Null(await Jobs.BeginNext(Later, Cancel));
        await Assert.ThrowsAsync<ParentNotFoundException>(() => Jobs.Queue("r5", "nowhere", Later, Cancel));
    }

    [Fact]
    public async Task One_is_compared_with_the_set_adopted_when_it_begins()
    {
        await store.Coefficients.Add(Proposal("by-hand"), Cancel);
        await Jobs.Queue("r1", "hill", Monday, Cancel);
        await store.Coefficients.Adopt(new("hill", "by-hand", Monday, null, null), Cancel);

        Assert.Equal("by-hand", (await Jobs.BeginNext(Later, Cancel))!.ComparedWith);
    }

    [Fact]
    public async Task Why_one_failed_is_kept_as_a_code_and_a_sentence_of_an_older_version_is_told_as_it_was()
    {
        await Jobs.Queue("r1", "hill", Monday, Cancel);
        await Jobs.End("r1", Later, RecalibrationStatus.Failed, new RecalibrationFailure.OwnFault(), Cancel);
        Assert.Equal(["{\"code\":\"own_fault\"}"], store.Column("SELECT Failure FROM Recalibration"));

        store.Execute("UPDATE Recalibration SET Failure = 'The service failed; its log says why.'");

        Assert.Equal(
            new RecalibrationFailure.SaidThen("The service failed; its log says why."),
            (await Jobs.Find("r1", Cancel))!.Failure);
    }

    [Theory]
    [InlineData(RecalibrationStatus.Cancelled)]
    [InlineData(RecalibrationStatus.Failed)]
    public async Task One_that_has_ended_keeps_no_proposal_and_ends_no_second_time(RecalibrationStatus how)
    {
        await Jobs.Queue("r1", "hill", Monday, Cancel);
        await Jobs.BeginNext(Later, Cancel);
        Assert.True(await Jobs.End("r1", Later, how, new RecalibrationFailure.OwnFault(), Cancel));

        Assert.False(await Jobs.Tell("r1", 0.5, "fitting", Cancel));
        Assert.False(await Jobs.Finish("r1", Later, Proposal("learned-1"), Cancel));
        Assert.False(await Jobs.End("r1", Later, RecalibrationStatus.Interrupted, cancel: Cancel));

        StoredRecalibration ended = (await Jobs.Find("r1", Cancel))!;
        Assert.Equal((how, new RecalibrationFailure.OwnFault(), false), (ended.Status, ended.Failure, ended.IsOpen));
        Assert.Null(await store.Coefficients.Find("hill", "learned-1", Cancel));
    }

    [Fact]
    public async Task One_that_waits_can_be_cancelled_and_is_not_begun()
    {
        await Jobs.Queue("r1", "hill", Monday, Cancel);

        Assert.True(await Jobs.End("r1", Later, RecalibrationStatus.Cancelled, cancel: Cancel));

        Assert.Null(await Jobs.BeginNext(Later, Cancel));
    }

    [Fact]
    public async Task What_ran_when_the_service_ended_is_interrupted_and_the_next_has_another_name()
    {
        await Jobs.Queue("r1", "hill", Monday, Cancel);
        await Jobs.BeginNext(Monday, Cancel);
        await Jobs.Queue("r2", "valley", Monday, Cancel);
        store.Reopen();

        Assert.Equal(1, await Jobs.InterruptRunning(Later, Cancel));

        Assert.Equal(RecalibrationStatus.Interrupted, (await Jobs.Find("r1", Cancel))!.Status);
        Assert.Equal("r2", (await Jobs.BeginNext(Later, Cancel))!.Id);
        Assert.Equal("learned-2", (await Jobs.Queue("r3", "hill", Later, Cancel))!.ProposalName);
        Assert.Equal(["r3", "r1"], (await Jobs.List("hill", Cancel)).Select(job => job.Id));
    }

    [Fact]
    public async Task A_proposal_whose_name_is_taken_leaves_the_recalibration_running()
    {
        await store.Coefficients.Add(Proposal("learned-1"), Cancel);
        await Jobs.Queue("r1", "hill", Monday, Cancel);
        await Jobs.BeginNext(Later, Cancel);

        await Assert.ThrowsAnyAsync<Exception>(() => Jobs.Finish("r1", Later, Proposal("learned-1"), Cancel));

        Assert.Equal(RecalibrationStatus.Running, (await Jobs.Find("r1", Cancel))!.Status);
    }

    public ValueTask DisposeAsync()
    {
        store.Dispose();
        return ValueTask.CompletedTask;
    }

    private static StoredCoefficientSet Proposal(string name) =>
        Filled<StoredCoefficientSet>() with { SiteId = "hill", Name = name };
}
