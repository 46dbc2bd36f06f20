using WitherAdvisor.Advice;

namespace WitherAdvisor.Loft.Records;

/// <summary>An advice as it was given. Every reader reads this; only a replay computes.</summary>
/// <param name="Format">Of the record: see <see cref="RecordFormat"/>.</param>
/// <param name="ModelVersion">Version of the library that made it.</param>
/// <param name="Inputs">What it was made of.</param>
/// <param name="Outcome">What was advised: the figures that were sent, with the digits behind them where those are known.</param>
/// <param name="AnswerJson">What was sent, byte for byte.</param>
/// <param name="RequestAsSent">The request of REST that format 1 kept, byte for byte; null in later formats.</param>
public sealed record AdviceRecord(
    string Id,
    string BatchId,
    DateTimeOffset MadeAt,
    RecordFormat Format,
    string ModelVersion,
    AdviceInputs Inputs,
    AdviceOutcome Outcome,
    string AnswerJson,
    string? RequestAsSent);
