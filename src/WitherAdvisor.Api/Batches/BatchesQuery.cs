using WitherAdvisor.Fields;

namespace WitherAdvisor.Api.Batches;

/// <summary>How many batches to answer with.</summary>
public sealed record BatchesQuery
{
    internal const int UsualMost = 50;

    /// <summary>Most batches wanted; 50 when left out.</summary>
    /// <example>50</example>
    [Measured(1, 500)]
    public int? Limit { get; init; }
}
