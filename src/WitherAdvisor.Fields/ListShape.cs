using System.Text.Json;

namespace WitherAdvisor.Fields;

/// <summary>A list of so many items of one shape.</summary>
internal sealed record ListShape(Shape Item, int Fewest, int Most) : Shape
{
    public override string Allowed => $"a list of {Fewest} to {Most} items";

    public override void Check(JsonElement value, string path, ICollection<FieldError> errors)
    {
        if (value.ValueKind != JsonValueKind.Array)
        {
            Refuse(value, path, errors);
            return;
        }

        int count = value.GetArrayLength();
        if (count < Fewest || count > Most)
        {
            errors.Add(FieldError.Of(path, $"{count} items", Allowed) with { Expected = this });
            return;
        }

        int index = 0;
        foreach (JsonElement item in value.EnumerateArray())
        {
            Item.Check(item, FieldPath.Item(path, index++), errors);
        }
    }
}
