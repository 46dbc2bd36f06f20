using Microsoft.AspNetCore.Http.HttpResults;
using WitherAdvisor.Api.Advice;
using WitherAdvisor.Api.Http;
using WitherAdvisor.Api.ModelCard.Responses;
using WitherAdvisor.Loft.Kept.Batches;
using WitherAdvisor.Loft.Records;
using WitherAdvisor.Loft.Records.Opening;
using WitherAdvisor.Sensitivities;

namespace WitherAdvisor.Api.ModelCard;

/// <summary>Route of what matters most for a batch.</summary>
internal static class BatchSensitivityEndpoint
{
    private const string NoPlan = "There is no plan that reaches the target, so there are no hours to compare.";

    public static void MapBatchSensitivity(this RouteGroupBuilder v1) =>
        v1.MapGet("/batches/{batch}/sensitivity", GetSensitivity).WithTags("Advice");

    /// <summary>Which inputs matter most for a batch, by the inputs of its newest advice: what to weigh or measure first.</summary>
    private static async Task<Results<Ok<BatchSensitivityResponse>, ProblemResult>> GetSensitivity(
        string batch, IBatchStore store, CancellationToken cancel)
    {
        if ((await store.ListAdvice(batch, cancel)) is not [{ } newest, ..])
        {
            return Problem.Unknown("batch", batch);
        }

        OpenedRecord opened = AdviceRecords.Open(newest);
        if (opened is not OpenedRecord.Readable { Record: var record })
        {
            return RecordProblems.Of((OpenedRecord.Unreadable)opened);
        }

        Sensitivity? sensitivity = SensitivityAnalysis.Of(record.Inputs.Request);
        return TypedResults.Ok(new BatchSensitivityResponse
        {
            Advice = newest.Id,
            Sensitivity = sensitivity is null ? null : SensitivityMapping.ToResponse(sensitivity),
            Reason = sensitivity is null ? NoPlan : null,
        });
    }
}
