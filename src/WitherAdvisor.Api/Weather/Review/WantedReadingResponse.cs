using WitherAdvisor.Review;

namespace WitherAdvisor.Api.Weather.Review;

/// <summary>A reading that would help.</summary>
public sealed record WantedReadingResponse
{
    /// <summary>Of what: dry and wet bulb, rain, or wind.</summary>
    /// <example>rain</example>
    public required WantedKind Kind { get; init; }

    /// <summary>Rain: from when on it is not known. Null for what is to be read now.</summary>
    /// <example>2026-03-01T07:00:00+05:30</example>
    public required DateTimeOffset? Since { get; init; }

    /// <summary>The same as a sentence, in the site's time.</summary>
    /// <example>Rain since Sun 07:00: read the gauge, or say that none fell.</example>
    public required string Text { get; init; }
}
