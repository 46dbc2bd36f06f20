using System.Text.Json;
using System.Text.RegularExpressions;

namespace WitherAdvisor.Fields;

/// <summary>A text that is not blank, has no control or unseen characters and fits.</summary>
internal sealed record TextShape(int Longest, string? Pattern) : Shape
{
    public override string Allowed =>
        $"text of 1 to {Longest} characters" + (Pattern is null ? ", none of them unseen" : $" matching {Pattern}");

    public override void Check(JsonElement value, string path, ICollection<FieldError> errors)
    {
        if (value.ValueKind != JsonValueKind.String || !IsGood(value.GetString()!))
        {
            Refuse(value, path, errors);
        }
    }

    public bool IsGood(string text) =>
        text.Length <= Longest
        && !string.IsNullOrWhiteSpace(text)
        && !text.Any(char.IsControl)
        && !UnseenCharacters.AnyIn(text)
        && (Pattern is null || Regex.IsMatch(text, Pattern, RegexOptions.NonBacktracking));
}
