using Microsoft.AspNetCore.Http.HttpResults;
using WitherAdvisor.Api.Http;
using WitherAdvisor.Loft.Kept.Batches;
using WitherAdvisor.Loft.Outcomes;

namespace WitherAdvisor.Api.Outcomes;

/// <summary>Routes of the outcome of a batch.</summary>
internal static class OutcomeEndpoints
{
    public static void MapOutcomes(this RouteGroupBuilder v1)
    {
        RouteGroupBuilder outcome = v1.MapGroup("/batches/{batch}/outcome").WithTags("Outcomes");
        outcome.MapGet("", GetOutcome);
        outcome.MapPut("", PutOutcome).Produces<ProblemResponse>(StatusCodes.Status409Conflict);
        outcome.MapGet("history", GetHistory);
    }

    /// <summary>Outcome of a batch, as last entered.</summary>
    private static async Task<Results<Ok<OutcomeResponse>, ProblemResult>> GetOutcome(
        string batch, IBatchStore batches, OutcomeReading reading, CancellationToken cancel)
    {
        if (await batches.Find(batch, cancel) is not { } found)
        {
            return Problem.Unknown("batch", batch);
        }

        return await reading.Newest(found, cancel) is { } newest ? TypedResults.Ok(new OutcomeResponse(newest)) : Problem.Unknown("outcome", batch);
    }

    /// <summary>
    /// Enters or changes the outcome of an unloaded batch; earlier versions stay in the history. Impossible values
    /// are refused; odd ones are answered with 409 and their codes, and accepted once those are sent back in confirm.
    /// </summary>
    private static async Task<Results<Ok<OutcomeResponse>, Created<OutcomeResponse>, ProblemResult>> PutOutcome(
        string batch, Body<OutcomeRequest> body, OutcomeEntry entry, IBatchStore batches, OutcomeReading reading, CancellationToken cancel)
    {
        OutcomeEntryResult result = await entry.Enter(batch, OutcomeMapping.ToEntered(body.Value), cancel);
        if (OutcomeRefusals.Problem(result, batch) is { } refusal)
        {
            return refusal;
        }

        OutcomeResponse answer = new((await reading.Newest((await batches.Find(batch, cancel))!, cancel))!);
        return result is OutcomeEntryResult.Kept { IsFirst: true } ? TypedResults.Created($"/v1/batches/{batch}/outcome", answer) : TypedResults.Ok(answer);
    }

    /// <summary>Every version of a batch's outcome, newest first.</summary>
    private static async Task<Results<Ok<List<OutcomeResponse>>, ProblemResult>> GetHistory(
        string batch, IBatchStore batches, OutcomeReading reading, CancellationToken cancel) =>
        await batches.Find(batch, cancel) is { } found
            ? TypedResults.Ok((await reading.History(found, cancel)).Select(version => new OutcomeResponse(version)).ToList())
            : Problem.Unknown("batch", batch);
}
