using WitherAdvisor.Fields;

namespace WitherAdvisor.Api.Batches;

/// <summary>A batch to keep and advise on, and the trough of the site that it lies on.</summary>
public sealed record BatchOnTroughRequest : BatchRequest
{
    /// <summary>Id of the trough.</summary>
    /// <example>trough-1</example>
    [Text(Slug.Longest, Pattern = Slug.Pattern)]
    public required string Trough { get; init; }
}
