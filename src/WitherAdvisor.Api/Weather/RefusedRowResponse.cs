using WitherAdvisor.Fields;

namespace WitherAdvisor.Api.Weather;

/// <summary>A row of a CSV body that was not kept.</summary>
public sealed record RefusedRowResponse
{
    /// <summary>Its line in the body; the header is line 1.</summary>
    /// <example>4</example>
    public required int Line { get; init; }

    /// <summary>All that is wrong with it.</summary>
    public required IReadOnlyList<FieldError> Errors { get; init; }
}
