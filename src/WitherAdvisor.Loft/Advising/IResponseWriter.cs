using WitherAdvisor.Advice;
using WitherAdvisor.Loft.Records;

namespace WitherAdvisor.Loft.Advising;

/// <summary>Writes an advice as it is sent to callers, so that what was sent can be kept byte for byte.</summary>
public interface IResponseWriter
{
    string Write(AdviceInputs inputs, AdviceOutcome outcome);
}
