using WitherAdvisor.Loft.Kept.Batches;

namespace WitherAdvisor.Store.Sqlite;

/// <summary>A row of Advice, in the order selected.</summary>
internal sealed record AdviceRow(
    string Id, string BatchId, long MadeAtMs, string ModelVersion, string RequestJson, string AnswerJson)
{
    public static AdviceRow Of(StoredAdvice advice) => new(
        advice.Id, advice.BatchId, advice.MadeAt.ToUnixTimeMilliseconds(),
        advice.ModelVersion, advice.RequestJson, advice.AnswerJson);

    public StoredAdvice ToAdvice() =>
        new(Id, BatchId, DateTimeOffset.FromUnixTimeMilliseconds(MadeAtMs), ModelVersion, RequestJson, AnswerJson);
}
