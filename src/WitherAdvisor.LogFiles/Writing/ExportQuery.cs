using WitherAdvisor.Fields;
using WitherAdvisor.Loft.Kept.Outcomes;
using WitherAdvisor.Spells;

namespace WitherAdvisor.LogFiles.Writing;

/// <summary>Which outcomes to write, and as what. What is left out is not filtered by.</summary>
public sealed record ExportQuery : ICrossChecked
{
    /// <summary>What to write.</summary>
    /// <example>csv</example>
    public required ExportFormat Format { get; init; }

    /// <summary>Loaded at or after.</summary>
    /// <example>2026-01-01T00:00:00+05:30</example>
    public DateTimeOffset? From { get; init; }

    /// <summary>Loaded before.</summary>
    /// <example>2027-01-01T00:00:00+05:30</example>
    public DateTimeOffset? To { get; init; }

    /// <summary>The weather the leaf grew in, as the last advice judged it; batches without advice have none.</summary>
    /// <example>wet</example>
    public SpellKind? Spell { get; init; }

    /// <summary>Cultivar, spelt as on the label.</summary>
    /// <example>Clone A (invented)</example>
    [Text(80)]
    public string? Cultivar { get; init; }

    public IEnumerable<FieldError> CrossCheck()
    {
        if (To <= From)
        {
            yield return FieldError.Of("to", $"\"{Rfc3339.Format(To.Value)}\"", $"after from, {Rfc3339.Format(From.Value)}");
        }
    }

    internal OutcomeFilter ToFilter() => new(From, To, Spell, Cultivar);
}
