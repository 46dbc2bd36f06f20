using System.Text.Json.Nodes;
using WitherAdvisor.Fields;

namespace WitherAdvisor.Api.Tests.Testing;

/// <summary>A field of a request: its path in errors and the way to it in a body.</summary>
internal sealed record FieldPlace(string Path, IReadOnlyList<object> Steps, Shape Shape, bool Required)
{
    public static IReadOnlyList<FieldPlace> Of(RequestForm form) => [.. Within("", [], Shapes.Of(form.Input))];

    public JsonNode Parent(JsonNode body) => Steps.SkipLast(1).Aggregate(body, Step);

    /// <summary>Puts raw JSON in the field's place; null leaves the field out.</summary>
    public string Replace(JsonNode body, string? json)
    {
        const string mark = "\"PLACE OF THE FIELD\"";
        JsonNode copy = body.DeepClone();
        JsonNode parent = Parent(copy);
        if (Steps[^1] is int index)
        {
            parent.AsArray()[index] = JsonNode.Parse(mark);
        }
        else if (json is null)
        {
            parent.AsObject().Remove((string)Steps[^1]);
        }
        else
        {
            parent[(string)Steps[^1]] = JsonNode.Parse(mark);
        }

        return copy.ToJsonString().Replace(mark, json ?? mark);
    }

    private static JsonNode Step(JsonNode node, object step) => step is int index ? node[index]! : node[(string)step]!;

    private static IEnumerable<FieldPlace> Within(string path, object[] steps, Shape shape) => shape switch
    {
        ObjectShape fields => fields.Fields.SelectMany(field =>
        {
            string at = FieldPath.Join(path, field.Name);
            object[] way = [.. steps, field.Name];
            return Within(at, way, field.Shape).Prepend(new(at, way, field.Shape, field.Required));
        }),
        ListShape list => Within(FieldPath.Item(path, 0), [.. steps, 0], list.Item),
        _ => [],
    };
}
