using System.Diagnostics.CodeAnalysis;

namespace WitherAdvisor.Fields;

/// <summary>How long a text of a request may be, and what it has to look like.</summary>
[AttributeUsage(AttributeTargets.Property)]
public sealed class TextAttribute(int longest) : Attribute
{
    /// <summary>Most characters.</summary>
    public int Longest { get; } = longest;

    /// <summary>Anchored regular expression; null where any printable text will do.</summary>
    [StringSyntax(StringSyntaxAttribute.Regex)]
    public string? Pattern { get; init; }
}
