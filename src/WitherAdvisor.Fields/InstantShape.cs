using System.Text.Json;

namespace WitherAdvisor.Fields;

/// <summary>An instant: RFC 3339 with seconds and offset, in a year that leaf is plucked in.</summary>
internal sealed record InstantShape : Shape
{
    public const int FirstYear = 1950;
    public const int LastYear = 2100;

    public override string Allowed =>
        $"a time by RFC 3339 with seconds and offset (2026-03-01T06:30:00+05:30), years {FirstYear} to {LastYear}";

    public override void Check(JsonElement value, string path, ICollection<FieldError> errors)
    {
        if (value.ValueKind != JsonValueKind.String
            || Rfc3339.Parse(value.GetString()!) is not { } time
            || time.UtcDateTime.Year is < FirstYear or > LastYear)
        {
            Refuse(value, path, errors);
        }
    }
}
