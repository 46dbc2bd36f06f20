using WitherAdvisor.Api.Http;
using WitherAdvisor.Fields;
using WitherAdvisor.Loft.Importing;

namespace WitherAdvisor.Api.Outcomes.Import;

/// <summary>A row of an imported log.</summary>
public sealed record ImportRowResponse
{
    /// <summary>Line of the file that it begins on; the header is line 1.</summary>
    /// <example>2</example>
    public required int Line { get; init; }

    /// <summary>What it comes to.</summary>
    /// <example>new</example>
    public required RowState State { get; init; }

    /// <summary>What it tells of, for people; null where that could not be read.</summary>
    /// <example>trough-1, 2026-03-01 13:00, Upper division, Field 7</example>
    public required string? Batch { get; init; }

    /// <summary>What does not fit: column, given, allowed.</summary>
    public required IReadOnlyList<FieldError> Errors { get; init; }

    /// <summary>What looks odd.</summary>
    public required IReadOnlyList<ProblemWarning> Warnings { get; init; }
}
