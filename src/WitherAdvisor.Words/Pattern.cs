using System.Globalization;
using System.Text;

namespace WitherAdvisor.Words;

/// <summary>A text with gaps: "{name}" takes a value, "{count|one row|{count} rows}" the form that the language has for that count.</summary>
internal sealed class Pattern
{
    private readonly IReadOnlyList<PatternPart> parts;

    private Pattern(IReadOnlyList<PatternPart> parts) => this.parts = parts;

    public static Pattern Of(string text) => new(new PatternReader(text).Read());

    /// <summary>Names of all gaps, those inside forms too.</summary>
    public IEnumerable<string> Gaps => parts.SelectMany(Named).Distinct(StringComparer.Ordinal);

    /// <summary>How many forms each counted gap has.</summary>
    public IEnumerable<int> FormCounts => parts.Where(part => part.Forms.Count > 0).Select(part => part.Forms.Count);

    public string Fill(string key, ReadOnlySpan<(string Name, object Value)> values, Counting counting, Func<string, string> encode)
    {
        if (parts is [{ IsGap: false } only])
        {
            return only.Text;
        }

        StringBuilder filled = new();
        Write(filled, key, values, counting, encode);
        return filled.ToString();
    }

    private static IEnumerable<string> Named(PatternPart part) => part.IsGap
        ? part.Forms.SelectMany(form => form.parts.SelectMany(Named)).Prepend(part.Text)
        : [];

    private void Write(
        StringBuilder filled, string key, ReadOnlySpan<(string Name, object Value)> values, Counting counting, Func<string, string> encode)
    {
        foreach (PatternPart part in parts)
        {
            if (!part.IsGap)
            {
                filled.Append(part.Text);
                continue;
            }

            object value = Value(part.Text, key, values);
            if (part.Forms.Count == 0)
            {
                filled.Append(encode(Convert.ToString(value, CultureInfo.InvariantCulture) ?? ""));
            }
            else
            {
                part.Forms[counting.FormOf((int)value)].Write(filled, key, values, counting, encode);
            }
        }
    }

    private static object Value(string name, string key, ReadOnlySpan<(string Name, object Value)> values)
    {
        foreach ((string given, object value) in values)
        {
            if (given == name)
            {
                return value;
            }
        }

        throw new KeyNotFoundException($"The words of {key} need a value for {name}.");
    }
}
