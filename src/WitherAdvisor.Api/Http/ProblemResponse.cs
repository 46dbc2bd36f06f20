using System.Text.Json.Serialization;
using WitherAdvisor.Fields;

namespace WitherAdvisor.Api.Http;

/// <summary>Why a request was refused: problem details by RFC 9457.</summary>
public sealed record ProblemResponse
{
    /// <summary>Which kind of problem; about:blank where the status says it all.</summary>
    /// <example>urn:witheradvisor:problem:invalid-input</example>
    public required string Type { get; init; }

    /// <summary>The kind of problem in words.</summary>
    /// <example>The request has errors.</example>
    public required string Title { get; init; }

    /// <summary>HTTP status, as on the status line.</summary>
    /// <example>400</example>
    public required int Status { get; init; }

    /// <summary>What is wrong this time.</summary>
    /// <example>1 field has an error: batch.green_weight_kg is 20000; allowed is 1 to 10000 kg.</example>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public string? Detail { get; init; }

    /// <summary>The path that was asked.</summary>
    /// <example>/v1/advice</example>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public string? Instance { get; init; }

    /// <summary>Each thing that is wrong; only with invalid-input.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public IReadOnlyList<FieldError>? Errors { get; init; }

    /// <summary>Each thing that looks odd; only with outcomes.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public IReadOnlyList<ProblemWarning>? Warnings { get; init; }
}
