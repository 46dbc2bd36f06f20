using System.Text.Json;

namespace WitherAdvisor.Fields;

/// <summary>An object of named fields; anything else in it is refused.</summary>
internal sealed record ObjectShape(IReadOnlyList<FieldShape> Fields) : Shape
{
    public override string Allowed => "an object with: " + string.Join(", ", Fields.Select(known => known.Name));

    public override void Check(JsonElement value, string path, ICollection<FieldError> errors)
    {
        if (value.ValueKind != JsonValueKind.Object)
        {
            Refuse(value, path, errors);
            return;
        }

        HashSet<string> seen = [];
        foreach (JsonProperty property in value.EnumerateObject())
        {
            CheckProperty(property, seen, path, errors);
        }

        foreach (FieldShape field in Fields.Where(field => field.Required && !seen.Contains(field.Name)))
        {
            errors.Add(FieldError.Missing(FieldPath.Join(path, field.Name), field.Shape.Allowed) with { Expected = field.Shape });
        }
    }

    private void CheckProperty(
        JsonProperty property, HashSet<string> seen, string path, ICollection<FieldError> errors)
    {
        string at = FieldPath.Join(path, property.Name);
        FieldShape? field = Fields.FirstOrDefault(field => field.Name == property.Name);
        if (field is null)
        {
            errors.Add(FieldError.Unknown(at, property.Value, Fields.Select(known => known.Name)));
        }
        else if (!seen.Add(property.Name))
        {
            errors.Add(FieldError.Of(at, property.Value, "one value; the name was given twice"));
        }
        else if (property.Value.ValueKind != JsonValueKind.Null)
        {
            field.Shape.Check(property.Value, at, errors);
        }
        else if (field.Required)
        {
            errors.Add(FieldError.Of(at, property.Value, field.Shape.Allowed) with { Expected = field.Shape });
        }
    }
}
