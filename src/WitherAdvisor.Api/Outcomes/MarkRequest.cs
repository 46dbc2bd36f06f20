using WitherAdvisor.Fields;

namespace WitherAdvisor.Api.Outcomes;

/// <summary>A taster's mark for the tea made of the batch.</summary>
public sealed record MarkRequest
{
    /// <summary>Name of one of the site's scales.</summary>
    /// <example>Briskness</example>
    [Text(TasterScaleRequest.LongestName, Pattern = TasterScaleRequest.NamePattern)]
    public required string Scale { get; init; }

    /// <summary>On that scale.</summary>
    /// <example>7.5</example>
    [Measured(-1000, 1000)]
    public required double Mark { get; init; }
}
