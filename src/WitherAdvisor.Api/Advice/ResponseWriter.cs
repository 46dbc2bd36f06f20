using System.Text.Json;
using WitherAdvisor.Advice;
using WitherAdvisor.Fields.Json;
using WitherAdvisor.Loft.Advising;
using WitherAdvisor.Loft.Records;

namespace WitherAdvisor.Api.Advice;

/// <summary>Writes advice as this interface sends it.</summary>
internal sealed class ResponseWriter : IResponseWriter
{
    public string Write(AdviceInputs inputs, AdviceOutcome outcome)
    {
        WitherClock clock = new(inputs.TimeZone, inputs.Request.Batch.LoadedAt);
        return JsonSerializer.Serialize(AdviceResponseMapping.ToResponse(outcome, clock), JsonRules.Response);
    }
}
