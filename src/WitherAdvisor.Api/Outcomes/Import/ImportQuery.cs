using WitherAdvisor.Loft.Importing;

namespace WitherAdvisor.Api.Outcomes.Import;

/// <summary>How a log is imported.</summary>
public sealed record ImportQuery
{
    /// <summary>Whether to keep anything or only to say what would be kept.</summary>
    /// <example>preview</example>
    public required ImportMode Mode { get; init; }

    /// <summary>What to keep where some rows do not fit; all_or_none when left out.</summary>
    /// <example>all_or_none</example>
    public KeepRows? Keep { get; init; }

    /// <summary>What becomes of rows that look odd; ask when left out.</summary>
    /// <example>ask</example>
    public OddRows? Odd { get; init; }
}
