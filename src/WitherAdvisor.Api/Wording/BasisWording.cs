using WitherAdvisor.Coefficients;
using WitherAdvisor.Documentation;

namespace WitherAdvisor.Api.Wording;

/// <summary>Parts of the model and how well its numbers are founded, in words.</summary>
public static class BasisWording
{
    public static string Name(ModelTopic topic) => topic switch
    {
        ModelTopic.Air => "Moist air",
        ModelTopic.Weather => "What the weather did to the leaf",
        ModelTopic.Spell => "The spell it grew in",
        ModelTopic.Bed => "The bed",
        ModelTopic.Plan => "The plan",
        ModelTopic.Uncertainty => "How sure it is",
        _ => throw new ArgumentOutOfRangeException(nameof(topic), topic, "No words for this topic."),
    };

    public static string Name(CoefficientStatus status) => status switch
    {
        CoefficientStatus.Published => "published",
        CoefficientStatus.Derived => "derived",
        CoefficientStatus.CommonPractice => "common practice",
        CoefficientStatus.FromMemory => "from memory",
        CoefficientStatus.Fitted => "fitted",
        CoefficientStatus.Definition => "definition",
        CoefficientStatus.Placeholder => "placeholder",
        _ => throw new ArgumentOutOfRangeException(nameof(status), status, "No words for this status."),
    };
}
