using System.Text.Json;
using WitherAdvisor.Advice;
using WitherAdvisor.Fields.Json;
using WitherAdvisor.Loft.Advising;
using WitherAdvisor.Loft.Records;

namespace WitherAdvisor.Api.Advice;

/// <summary>Writes advice as this interface sends it.</summary>
internal sealed class AnswerWriter : IAnswerWriter
{
    public string Write(AdviceInputs inputs, AdviceOutcome outcome)
    {
        WitherClock clock = new(inputs.TimeZone, inputs.Request.Batch.LoadedAt);
        return JsonSerializer.Serialize(AdviceAnswerMapping.ToAnswer(outcome, clock), JsonRules.Answer);
    }
}
