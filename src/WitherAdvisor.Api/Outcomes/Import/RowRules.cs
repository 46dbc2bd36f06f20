using WitherAdvisor.Api.Batches;
using WitherAdvisor.Fields;
using WitherAdvisor.Leaf;
using WitherAdvisor.LogFiles.Reading;
using WitherAdvisor.Loft.Kept.Outcomes;

namespace WitherAdvisor.Api.Outcomes.Import;

/// <summary>Rows of a log keep to what requests keep to.</summary>
internal sealed class RowRules : IRowRules
{
    public IEnumerable<FieldError> Check(Batch batch) => BatchMapping.ToRequest(batch).CrossCheck();

    public IEnumerable<FieldError> Check(StoredOutcome outcome) => OutcomeChecks.Of(OutcomeMapping.ToRequest(outcome));
}
