using System.Text.Json;
using WitherAdvisor.Advice;
using WitherAdvisor.Loft.Kept.Batches;
using WitherAdvisor.Loft.Records.Format1;
using WitherAdvisor.Loft.Records.Format2;
using WitherAdvisor.Loft.Records.Sent;

namespace WitherAdvisor.Loft.Records.Opening;

/// <summary>
/// Between an advice and the form that it is kept in. What was sent is the advice: figures come from the answer's bytes,
/// with the digits behind them from the outcome kept beside it, as long as they round to what was sent.
/// </summary>
public static class AdviceRecords
{
    /// <summary>A new record in the newest format.</summary>
    public static KeptAdvice Keep(
        string id, string batchId, DateTimeOffset madeAt, string modelVersion, AdviceInputs inputs, AdviceOutcome outcome, string answerJson) =>
        new(
            id, batchId, madeAt, (int)RecordFormat.Domain, modelVersion, outcome.CoefficientSet,
            RecordJson.Write(inputs), RecordJson.Write(KeptOutcome.Of(outcome)), answerJson);

    public static OpenedRecord Open(KeptAdvice kept)
    {
        if ((RecordFormat)kept.Format is not (RecordFormat.RestOfVersion1 or RecordFormat.Domain))
        {
            return new OpenedRecord.Unreadable(kept.Id, RecordFault.UnknownFormat, kept.Format);
        }

        if (Try(() => Inputs(kept)) is not { } inputs)
        {
            return new OpenedRecord.Unreadable(kept.Id, RecordFault.DamagedInputs, kept.Format);
        }

        return Try(() => SentAdvice.Read(kept.AnswerJson, Digits(kept, inputs), inputs.Request.Site.PressurePa)) is { } outcome
            ? new OpenedRecord.Readable(new(
                kept.Id, kept.BatchId, kept.MadeAt, (RecordFormat)kept.Format, kept.ModelVersion, inputs, outcome, kept.AnswerJson,
                (RecordFormat)kept.Format == RecordFormat.RestOfVersion1 ? kept.InputsJson : null))
            : new OpenedRecord.Unreadable(kept.Id, RecordFault.DamagedAnswer, kept.Format);
    }

    private static AdviceInputs Inputs(KeptAdvice kept) => (RecordFormat)kept.Format == RecordFormat.RestOfVersion1
        ? RestInputs.Read(kept.InputsJson)
        : RecordJson.Read<AdviceInputs>(FormerNames.Now(kept.InputsJson));

    /// <summary>
    /// Format 1 kept no digits beyond those sent. Where the model still gives the figures that were sent, its digits are
    /// those that the page of that time showed; where it does not, each figure stands as sent.
    /// </summary>
    private static AdviceOutcome Digits(KeptAdvice kept, AdviceInputs inputs) => (RecordFormat)kept.Format == RecordFormat.RestOfVersion1
        ? Advisor.Advise(inputs.Request)
        : RecordJson.Read<KeptOutcome>(FormerNames.Now(kept.OutcomeJson ?? throw new InvalidDataException("There is no outcome."))).ToOutcome();

    // Whatever stands in a damaged file, a reader is told that it is damaged.
    private static T? Try<T>(Func<T> read)
        where T : class
    {
        try
        {
            return read();
        }
        catch (Exception damage) when (damage
            is JsonException or InvalidDataException or InvalidOperationException or KeyNotFoundException or FormatException or ArgumentException)
        {
            return null;
        }
    }
}
