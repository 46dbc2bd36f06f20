using System.Text.Json;

namespace WitherAdvisor.Fields;

/// <summary>One of a few names, spelt exactly.</summary>
internal sealed record ChoiceShape(IReadOnlyList<string> Names) : Shape
{
    public override string Allowed => "one of: " + string.Join(", ", Names);

    public override void Check(JsonElement value, string path, ICollection<FieldError> errors)
    {
        if (value.ValueKind != JsonValueKind.String || !Names.Contains(value.GetString()))
        {
            Refuse(value, path, errors);
        }
    }
}
