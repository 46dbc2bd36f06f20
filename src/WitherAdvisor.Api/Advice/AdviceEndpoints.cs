using System.Net.Mime;
using System.Text.Json;
using Microsoft.AspNetCore.Http.HttpResults;
using WitherAdvisor.Advice;
using WitherAdvisor.Api.Advice.Responses;
using WitherAdvisor.Api.Batches;
using WitherAdvisor.Api.Feeds;
using WitherAdvisor.Api.Http;
using WitherAdvisor.Fields.Json;
using WitherAdvisor.Loft.Advising;
using WitherAdvisor.Loft.Kept.Batches;
using WitherAdvisor.Loft.Records;
using WitherAdvisor.Loft.Records.Opening;

namespace WitherAdvisor.Api.Advice;

/// <summary>Routes of advice.</summary>
internal static class AdviceEndpoints
{
    /// <summary>Header that says whether a replay came out byte for byte as the advice was given.</summary>
    public const string IdenticalHeader = "Replay-Identical";

    public static void MapAdvice(this RouteGroupBuilder v1)
    {
        RouteGroupBuilder advice = v1.MapGroup("").WithTags("Advice");
        advice.MapPost("advice", PostAdvice).Produces<AdviceResponse>();
        advice.MapGet("advice/{advice}", GetAdvice).Produces<AdviceResponse>();
        advice.MapGet("advice/{advice}/request", GetRequest).Produces<StatelessAdviceRequest>();
        advice.MapPost("advice/{advice}/replay", PostReplay).Produces<AdviceResponse>();
        advice.MapGet("batches/{batch}/advice", ListAdvice);
        advice.MapPost("batches/{batch}/advice", PostAgain).Produces<ProblemResponse>(StatusCodes.Status409Conflict);
    }

    /// <summary>Advice from what the request carries, and nothing else. Nothing is kept.</summary>
    private static ContentHttpResult PostAdvice(Body<StatelessAdviceRequest> body, IResponseWriter answers) =>
        Json(Computed(AdviceRequestMapping.ToDomain(body.Value), answers));

    /// <summary>An advice, byte for byte as it was given.</summary>
    private static async Task<Results<ContentHttpResult, ProblemResult>> GetAdvice(
        string advice, IBatchStore store, CancellationToken cancel) =>
        await Open(advice, store, record => Json(record.AnswerJson), cancel);

    /// <summary>The request behind an advice: sent to /v1/advice it gives the same answer.</summary>
    private static async Task<Results<ContentHttpResult, ProblemResult>> GetRequest(
        string advice, IBatchStore store, CancellationToken cancel) =>
        await Open(
            advice, store,
            record => Json(record.RequestAsSent ?? JsonSerializer.Serialize(AdviceRequestMapping.ToRequest(record.Inputs), JsonRules.Request)),
            cancel);

    /// <summary>
    /// Replays an advice from its kept inputs. The header Replay-Identical says whether the result is byte for
    /// byte what was given; after a change of the model it may not be.
    /// </summary>
    private static async Task<Results<ContentHttpResult, ProblemResult>> PostReplay(
        string advice, IBatchStore store, IResponseWriter answers, HttpResponse response, CancellationToken cancel) =>
        await Open(
            advice, store,
            record =>
            {
                string replayed = Computed(record.Inputs, answers);
                response.Headers[IdenticalHeader] = replayed == record.AnswerJson ? "true" : "false";
                return Json(replayed);
            },
            cancel);

    /// <summary>All advice given for a batch, newest first.</summary>
    private static async Task<Results<Ok<List<KeptAdviceResponse>>, ProblemResult>> ListAdvice(
        string batch, IBatchStore store, CancellationToken cancel)
    {
        if (await store.Find(batch, cancel) is null)
        {
            return Problem.Unknown("batch", batch);
        }

        IReadOnlyList<KeptAdvice> given = await store.ListAdvice(batch, cancel);
        return TypedResults.Ok(given.Select(KeptAdviceResponse.Of).ToList());
    }

    /// <summary>Makes new advice for a batch from the newest weather of its site. Earlier advice stays.</summary>
    private static async Task<Results<Created<NewAdviceResponse>, ProblemResult>> PostAgain(
        string batch, AdviceMaking making, FeedStates feeds, CancellationToken cancel) =>
        await making.Again(batch, cancel) switch
        {
            AgainResult.Advised again => TypedResults.Created(
                $"/v1/advice/{again.Advice.Id}",
                new NewAdviceResponse(KeptAdviceResponse.Of(again.Advice), await feeds.Of(again.Batch.SiteId, cancel))),
            AgainResult.Ended ended => AlreadyEnded.Batch(ended.Batch),
            _ => Problem.Unknown("batch", batch),
        };

    private static async Task<Results<ContentHttpResult, ProblemResult>> Open(
        string advice, IBatchStore store, Func<AdviceRecord, ContentHttpResult> show, CancellationToken cancel)
    {
        if (await store.FindAdvice(advice, cancel) is not { } kept)
        {
            return Problem.Unknown("advice", advice);
        }

        return AdviceRecords.Open(kept) switch
        {
            OpenedRecord.Readable readable => show(readable.Record),
            var unreadable => RecordProblems.Of((OpenedRecord.Unreadable)unreadable),
        };
    }

    private static string Computed(AdviceInputs inputs, IResponseWriter answers) =>
        answers.Write(inputs, Advisor.Advise(inputs.Request));

    private static ContentHttpResult Json(string text) => TypedResults.Text(text, MediaTypeNames.Application.Json);
}
