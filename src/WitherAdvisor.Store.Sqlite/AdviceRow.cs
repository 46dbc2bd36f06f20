using WitherAdvisor.Loft.Kept.Batches;

namespace WitherAdvisor.Store.Sqlite;

/// <summary>A row of Advice, in the order selected.</summary>
internal sealed record AdviceRow(
    string Id, string BatchId, long MadeAtMs, long Format, string ModelVersion, string? CoefficientSet,
    string RequestJson, string? OutcomeJson, string AnswerJson)
{
    public static AdviceRow Of(KeptAdvice advice) => new(
        advice.Id, advice.BatchId, advice.MadeAt.ToUnixTimeMilliseconds(), advice.Format, advice.ModelVersion, advice.CoefficientSet,
        advice.InputsJson, advice.OutcomeJson, advice.AnswerJson);

    public KeptAdvice ToAdvice() => new(
        Id, BatchId, DateTimeOffset.FromUnixTimeMilliseconds(MadeAtMs), (int)Format, ModelVersion, CoefficientSet,
        RequestJson, OutcomeJson, AnswerJson);
}
