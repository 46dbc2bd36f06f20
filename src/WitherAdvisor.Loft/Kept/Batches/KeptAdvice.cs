namespace WitherAdvisor.Loft.Kept.Batches;

/// <summary>An advice in the form that it is kept in; <see cref="Records.Opening.AdviceRecords"/> opens it.</summary>
/// <param name="Id">Made by the service.</param>
/// <param name="BatchId">The batch it is for.</param>
/// <param name="MadeAt">When.</param>
/// <param name="Format">Of the record, a number: what a later release wrote is kept too.</param>
/// <param name="ModelVersion">Version of the library that made it.</param>
/// <param name="CoefficientSet">Name of the set that made it; null where format 1 did not tell.</param>
/// <param name="InputsJson">Everything that went in.</param>
/// <param name="OutcomeJson">What came out, with every digit; null in format 1.</param>
/// <param name="AnswerJson">What was sent, byte for byte.</param>
public sealed record KeptAdvice(
    string Id, string BatchId, DateTimeOffset MadeAt, int Format, string ModelVersion, string? CoefficientSet,
    string InputsJson, string? OutcomeJson, string AnswerJson);
