using System.Net.Mime;
using Microsoft.AspNetCore.Http.HttpResults;
using WitherAdvisor.Api.Advice.Answers;
using WitherAdvisor.Api.Batches;
using WitherAdvisor.Api.Feeds;
using WitherAdvisor.Api.Http;
using WitherAdvisor.Loft.Kept.Batches;

namespace WitherAdvisor.Api.Advice;

/// <summary>Routes of advice.</summary>
internal static class AdviceEndpoints
{
    /// <summary>Header that says whether a replay came out byte for byte as the advice was given.</summary>
    public const string IdenticalHeader = "Replay-Identical";

    public static void MapAdvice(this RouteGroupBuilder v1)
    {
        RouteGroupBuilder advice = v1.MapGroup("").WithTags("Advice");
        advice.MapPost("advice", PostAdvice).Produces<AdviceAnswer>();
        advice.MapGet("advice/{advice}", GetAdvice).Produces<AdviceAnswer>();
        advice.MapGet("advice/{advice}/input", GetInput).Produces<AdviceInput>();
        advice.MapPost("advice/{advice}/replay", PostReplay).Produces<AdviceAnswer>();
        advice.MapGet("batches/{batch}/advice", ListAdvice);
        advice.MapPost("batches/{batch}/advice", PostAgain).Produces<ProblemAnswer>(StatusCodes.Status409Conflict);
    }

    /// <summary>Advice from what the request carries, and nothing else. Nothing is kept.</summary>
    private static ContentHttpResult PostAdvice(Body<AdviceInput> body) =>
        Json(AdviceRecipe.Make(AdviceRecipe.Write(body.Value)));

    /// <summary>An advice, byte for byte as it was given.</summary>
    private static async Task<Results<ContentHttpResult, ProblemResult>> GetAdvice(
        string advice, IBatchStore store, CancellationToken cancel) =>
        await store.FindAdvice(advice, cancel) is { } found ? Json(found.AnswerJson) : Problem.Unknown("advice", advice);

    /// <summary>All that an advice was made of: sent to /v1/advice it gives the same answer.</summary>
    private static async Task<Results<ContentHttpResult, ProblemResult>> GetInput(
        string advice, IBatchStore store, CancellationToken cancel) =>
        await store.FindAdvice(advice, cancel) is { } found ? Json(found.RequestJson) : Problem.Unknown("advice", advice);

    /// <summary>
    /// Makes an advice anew from its kept inputs. The header Replay-Identical says whether it came out byte for
    /// byte as it was given; after a change of the model it may not.
    /// </summary>
    private static async Task<Results<ContentHttpResult, ProblemResult>> PostReplay(
        string advice, IBatchStore store, HttpResponse response, CancellationToken cancel)
    {
        if (await store.FindAdvice(advice, cancel) is not { } found)
        {
            return Problem.Unknown("advice", advice);
        }

        string replayed = AdviceRecipe.Make(found.RequestJson);
        response.Headers[IdenticalHeader] = replayed == found.AnswerJson ? "true" : "false";
        return Json(replayed);
    }

    /// <summary>All advice given for a batch, newest first.</summary>
    private static async Task<Results<Ok<List<KeptAdviceAnswer>>, ProblemResult>> ListAdvice(
        string batch, IBatchStore store, CancellationToken cancel)
    {
        if (await store.Find(batch, cancel) is null)
        {
            return Problem.Unknown("batch", batch);
        }

        IReadOnlyList<StoredAdvice> given = await store.ListAdvice(batch, cancel);
        return TypedResults.Ok(given.Select(KeptAdviceAnswer.Of).ToList());
    }

    /// <summary>Advises on a batch again, from the newest weather of its site. What was advised before stays.</summary>
    private static async Task<Results<Created<NewAdviceAnswer>, ProblemResult>> PostAgain(
        string batch, IBatchStore store, AdviceKeeping keeping, FeedStates feeds, CancellationToken cancel)
    {
        if (await store.Find(batch, cancel) is not { } found)
        {
            return Problem.Unknown("batch", batch);
        }

        if (!found.IsRunning)
        {
            return AlreadyEnded.Batch(found);
        }

        StoredAdvice advice = await keeping.Again(found, cancel);
        return TypedResults.Created(
            $"/v1/advice/{advice.Id}", new NewAdviceAnswer(KeptAdviceAnswer.Of(advice), await feeds.Of(found.SiteId, cancel)));
    }

    private static ContentHttpResult Json(string text) => TypedResults.Text(text, MediaTypeNames.Application.Json);
}
