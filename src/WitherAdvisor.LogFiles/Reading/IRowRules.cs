using WitherAdvisor.Fields;
using WitherAdvisor.Leaf;
using WitherAdvisor.Loft.Kept.Outcomes;

namespace WitherAdvisor.LogFiles.Reading;

/// <summary>What a batch and an outcome keep to by themselves, wherever they come from; whoever takes them in states it.</summary>
internal interface IRowRules
{
    /// <summary>What of a batch does not fit, its times as they were given.</summary>
    IEnumerable<FieldError> Check(Batch batch);

    /// <summary>What of an outcome does not fit.</summary>
    IEnumerable<FieldError> Check(StoredOutcome outcome);
}
