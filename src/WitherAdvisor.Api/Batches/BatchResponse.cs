using System.Diagnostics.CodeAnalysis;
using System.Text.Json.Serialization;
using WitherAdvisor.Loft.Kept.Batches;

namespace WitherAdvisor.Api.Batches;

/// <summary>A batch as kept.</summary>
public sealed record BatchResponse : BatchRequest
{
    [SetsRequiredMembers]
    public BatchResponse(StoredBatch stored, BatchRequest batch)
        : base(batch)
    {
        Id = stored.Id;
        Site = stored.SiteId;
        Trough = stored.TroughId;
        WholeWeightKg = stored.Batch.Lots.Count > 0 ? stored.Batch.GreenWeightKg : null;
        CreatedAt = stored.CreatedAt;
        UnloadedAt = stored.UnloadedAt;
        Status = BatchMapping.ToStatus(stored.Ended);
        EndReason = stored.EndReason;
        MixedInto = stored.MixedIntoId;
        PluckingAssumed = stored.PluckingAssumed;
    }

    /// <summary>Made by the service.</summary>
    /// <example>0199d2b5-6f10-7c3a-9d4e-2f6a1b3c5d7e</example>
    [JsonPropertyOrder(-1)]
    public required string Id { get; init; }

    /// <summary>The site that took it in.</summary>
    /// <example>example-hill</example>
    [JsonPropertyOrder(-1)]
    public required string Site { get; init; }

    /// <summary>The trough that it was loaded on.</summary>
    /// <example>trough-1</example>
    [JsonPropertyOrder(-1)]
    public required string Trough { get; init; }

    /// <summary>Weight of all its lots as they came in or are expected; not there where it was loaded at once.</summary>
    /// <example>1176</example>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public double? WholeWeightKg { get; init; }

    /// <summary>When it was entered.</summary>
    /// <example>2026-03-01T13:05:00+05:30</example>
    public required DateTimeOffset CreatedAt { get; init; }

    /// <summary>When it left the trough, however it ended; null while it lies there, and where nobody knows.</summary>
    /// <example>2026-03-01T23:10:00+05:30</example>
    public required DateTimeOffset? UnloadedAt { get; init; }

    /// <summary>Whether it runs, and how it ended where it does not.</summary>
    /// <example>unloaded</example>
    public required BatchStatus Status { get; init; }

    /// <summary>Why it was cancelled or mixed; null where it was not.</summary>
    /// <example>Too little leaf for a trough of its own.</example>
    public required string? EndReason { get; init; }

    /// <summary>The batch that its leaf was mixed into; null where it was not.</summary>
    /// <example>0199d2b5-6f10-7c3a-9d4e-2f6a1b3c5d7e</example>
    public required string? MixedInto { get; init; }

    /// <summary>Whether nobody knew when it was plucked (a batch of the past), and the times were taken from that of loading.</summary>
    /// <example>false</example>
    public required bool PluckingAssumed { get; init; }
}
