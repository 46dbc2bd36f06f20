using System.Text.Json;

namespace WitherAdvisor.Fields;

/// <summary>A number within a range.</summary>
/// <param name="Unit">As people write it; null for a bare count.</param>
internal sealed record NumberShape(double Least, double Most, string? Unit, bool Whole) : Shape
{
    public override string Allowed =>
        $"{(Whole ? "a whole number from " : "")}{Least} to {Most}{(Unit is null ? "" : " " + Unit)}";

    public override void Check(JsonElement value, string path, ICollection<FieldError> errors)
    {
        if (!IsNumber(value, out double number) || !(number >= Least && number <= Most))
        {
            Refuse(value, path, errors);
        }
    }

    private bool IsNumber(JsonElement value, out double number)
    {
        number = double.NaN;
        return value.ValueKind == JsonValueKind.Number
            && value.TryGetDouble(out number)
            && (!Whole || value.TryGetInt32(out _));
    }
}
