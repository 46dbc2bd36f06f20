namespace WitherAdvisor.Api.Outcomes.Import;

/// <summary>What an import came to, or would come to.</summary>
public sealed record ImportResponse
{
    /// <summary>Whether anything was kept.</summary>
    /// <example>false</example>
    public required bool Kept { get; init; }

    /// <summary>Rows in the file.</summary>
    /// <example>120</example>
    public required int Rows { get; init; }

    /// <summary>Batches that were not known.</summary>
    /// <example>100</example>
    public required int New { get; init; }

    /// <summary>Outcomes for batches that were known without one.</summary>
    /// <example>5</example>
    public required int OutcomesAdded { get; init; }

    /// <summary>Rows of which everything is kept already.</summary>
    /// <example>12</example>
    public required int AlreadyThere { get; init; }

    /// <summary>Rows that look odd and that nobody has confirmed.</summary>
    /// <example>1</example>
    public required int Odd { get; init; }

    /// <summary>Rows that do not fit.</summary>
    /// <example>2</example>
    public required int Wrong { get; init; }

    /// <summary>The rows, wrong and odd ones first, at most 1000 of them.</summary>
    public required IReadOnlyList<ImportRowResponse> Report { get; init; }
}
