using Microsoft.AspNetCore.Http.HttpResults;
using WitherAdvisor.Api.Advice.Responses;
using WitherAdvisor.Api.Feeds;
using WitherAdvisor.Api.Feeds.Responses;
using WitherAdvisor.Api.Http;
using WitherAdvisor.Loft.Closing;
using WitherAdvisor.Loft.Intake;
using WitherAdvisor.Loft.Kept.Batches;
using WitherAdvisor.Loft.Kept.Sites;

namespace WitherAdvisor.Api.Batches;

/// <summary>Routes of batches.</summary>
internal static class BatchEndpoints
{
    public static void MapBatches(this RouteGroupBuilder v1)
    {
        RouteGroupBuilder batches = v1.MapGroup("").WithTags("Batches");
        batches.MapGet("sites/{site}/batches", ListBatches);
        batches.MapPost("sites/{site}/batches", PostBatch);
        batches.MapPost("sites/{site}/batches/{batch}/lots", PostLot).Produces<ProblemResponse>(StatusCodes.Status409Conflict);
        batches.MapGet("batches/{batch}", GetBatch);
        batches.MapPost("batches/{batch}/unloaded", PostUnloaded).Produces<ProblemResponse>(StatusCodes.Status409Conflict);
        batches.MapPost("batches/{batch}/cancelled", PostCancelled).Produces<ProblemResponse>(StatusCodes.Status409Conflict);
        batches.MapPost("batches/{batch}/mixed", PostMixed).Produces<ProblemResponse>(StatusCodes.Status409Conflict);
    }

    /// <summary>The batches of a site, newest first.</summary>
    private static async Task<Results<Ok<List<BatchResponse>>, ProblemResult>> ListBatches(
        string site, Query<BatchesQuery> query, ISiteStore sites, IBatchStore store, CancellationToken cancel)
    {
        if (await sites.FindSite(site, cancel) is null)
        {
            return Problem.Unknown("site", site);
        }

        var batches = await store.List(site, query.Value.Limit ?? BatchesQuery.UsualMost, cancel);
        return TypedResults.Ok(batches.Select(BatchMapping.ToResponse).ToList());
    }

    /// <summary>Takes in a batch and gives advice for it from the weather of the site. Batch and advice are kept.</summary>
    private static async Task<Results<Created<TakenBatchResponse>, ProblemResult>> PostBatch(
        string site, Body<BatchOnTroughRequest> body, BatchIntake intake, FeedStates feeds, CancellationToken cancel)
    {
        BatchOnTroughRequest batch = body.Value;
        return await intake.Take(site, batch.Trough, BatchMapping.ToDomain(batch), onceOnly: false, cancel) switch
        {
            IntakeResult.Taken taken => TypedResults.Created(
                $"/v1/batches/{taken.Batch.Id}", Answer(taken.Batch, taken.Warnings, taken.Advice, await feeds.Of(site, cancel))),
            IntakeResult.Refused refused => Problem.InvalidInput([.. refused.Faults.Select(BatchFaultMapping.ToError)]),
            IntakeResult.UnknownTrough => Problem.Unknown("trough", batch.Trough),
            _ => Problem.Unknown("site", site),
        };
    }

    /// <summary>Adds a lot to a running batch, in any order of loading, and advises on the whole again.</summary>
    private static async Task<Results<Created<TakenBatchResponse>, ProblemResult>> PostLot(
        string site, string batch, Body<LotRequest> body, LotIntake intake, FeedStates feeds, CancellationToken cancel) =>
        await intake.Add(site, batch, LotMapping.ToDomain(body.Value), cancel) switch
        {
            LotIntakeResult.Taken taken => TypedResults.Created(
                $"/v1/advice/{taken.Advice.Id}", Answer(taken.Batch, taken.Warnings, taken.Advice, await feeds.Of(site, cancel))),
            LotIntakeResult.Refused refused => Problem.InvalidInput([.. refused.Faults.Select(BatchFaultMapping.ToError)]),
            LotIntakeResult.Ended ended => AlreadyEnded.Batch(ended.Batch),
            LotIntakeResult.UnknownBatch => Problem.Unknown("batch", batch),
            _ => Problem.Unknown("site", site),
        };

    /// <summary>One batch.</summary>
    private static async Task<Results<Ok<BatchResponse>, ProblemResult>> GetBatch(
        string batch, IBatchStore store, CancellationToken cancel) =>
        await store.Find(batch, cancel) is { } found
            ? TypedResults.Ok(BatchMapping.ToResponse(found))
            : Problem.Unknown("batch", batch);

    /// <summary>Unloads a batch: it was withered and has left its trough.</summary>
    private static async Task<Results<Ok<BatchResponse>, ProblemResult>> PostUnloaded(
        string batch, Body<UnloadedRequest> body, BatchClosing closing, CancellationToken cancel) =>
        Answer(await closing.Unload(batch, body.Value.UnloadedAt.ToUniversalTime(), cancel), batch, "unloaded_at");

    /// <summary>Cancels a batch that was not withered here after all, and keeps the reason.</summary>
    private static async Task<Results<Ok<BatchResponse>, ProblemResult>> PostCancelled(
        string batch, Body<CancelledRequest> body, BatchClosing closing, CancellationToken cancel) =>
        Answer(await closing.Cancel(batch, body.Value.CancelledAt.ToUniversalTime(), body.Value.Reason, cancel), batch, "cancelled_at");

    /// <summary>Mixes a batch into another batch, and keeps the reason.</summary>
    private static async Task<Results<Ok<BatchResponse>, ProblemResult>> PostMixed(
        string batch, Body<MixedRequest> body, BatchClosing closing, CancellationToken cancel) =>
        Answer(
            await closing.Mix(batch, body.Value.MixedAt.ToUniversalTime(), body.Value.Into, body.Value.Reason, cancel), batch, "mixed_at");

    private static Results<Ok<BatchResponse>, ProblemResult> Answer(ClosingResult result, string batch, string field) =>
        result is ClosingResult.Ended ended
            ? TypedResults.Ok(BatchMapping.ToResponse(ended.Batch))
            : ClosingProblems.Of(result, batch, field);

    private static TakenBatchResponse Answer(
        StoredBatch batch, IReadOnlyList<Loft.Intake.LotWarning> warnings, KeptAdvice advice, FeedStateResponse? feed) => new()
        {
            Batch = BatchMapping.ToResponse(batch),
            Warnings = [.. warnings.Select(LotWarningMapping.ToResponse)],
            Kept = KeptAdviceResponse.Of(advice),
            Feed = feed,
        };
}
