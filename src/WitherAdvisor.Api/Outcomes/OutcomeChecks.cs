using System.Text.Json;
using WitherAdvisor.Fields;
using WitherAdvisor.Fields.Json;

namespace WitherAdvisor.Api.Outcomes;

/// <summary>Holds an outcome that did not come as JSON to what one that did is held to.</summary>
internal static class OutcomeChecks
{
    /// <summary>First each field, then whether the fields fit each other.</summary>
    public static IEnumerable<FieldError> Of(OutcomeRequest outcome)
    {
        Shape shape = Shapes.Of(typeof(OutcomeRequest));
        List<FieldError> wrong = [];
        shape.Check(JsonSerializer.SerializeToElement(outcome, JsonRules.Request), "", wrong);
        return wrong.Count > 0 ? wrong : CrossChecks.Of(outcome, shape);
    }
}
