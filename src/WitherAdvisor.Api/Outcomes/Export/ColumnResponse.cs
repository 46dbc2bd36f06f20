using WitherAdvisor.Fields;
using WitherAdvisor.Loft;
using WitherAdvisor.LogFiles.Columns;

namespace WitherAdvisor.Api.Outcomes.Export;

/// <summary>A column of the log.</summary>
public sealed record ColumnResponse
{
    /// <summary>As in the header; a number's ends in its unit.</summary>
    /// <example>withered_weight_kg</example>
    public required string Name { get; init; }

    /// <summary>What it tells of: batch, outcome or advice.</summary>
    /// <example>outcome</example>
    public required string Part { get; init; }

    /// <summary>One of: number, whole number, time, choice, text, list of numbers.</summary>
    /// <example>number</example>
    public required string Type { get; init; }

    /// <summary>Unit; null where it has none.</summary>
    /// <example>kg</example>
    public required string? Unit { get; init; }

    /// <summary>What it means.</summary>
    /// <example>Weight of the withered leaf.</example>
    public required string Meaning { get; init; }

    /// <summary>What is allowed there.</summary>
    /// <example>1 to 30000 kg</example>
    public required string Allowed { get; init; }

    /// <summary>Whether an import needs it.</summary>
    /// <example>false</example>
    public required bool Required { get; init; }

    /// <summary>Whether it follows from other columns: an import needs it not, and only holds it against them.</summary>
    /// <example>false</example>
    public required bool Follows { get; init; }

    internal static ColumnResponse Of(LogColumn column) => new()
    {
        Name = column.Name,
        Part = KeptWord.Of(column.Meaning.Part),
        Type = Kind(column),
        Unit = column.UnitSymbol,
        Meaning = column.Meaning.Text,
        Allowed = column.Meaning.Numbers ? "numbers with semicolons between them; nothing for an unknown one" : column.Field.Shape.Allowed,
        Required = column.Field.Required,
        Follows = column.Meaning.Follows,
    };

    private static string Kind(LogColumn column) => column.Field.Shape switch
    {
        NumberShape { Whole: true } => "whole number",
        NumberShape => "number",
        InstantShape => "time",
        ChoiceShape => "choice",
        _ => column.Meaning.Numbers ? "list of numbers" : "text",
    };
}
