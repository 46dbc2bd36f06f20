using System.Diagnostics.CodeAnalysis;
using System.Text.Json.Serialization;
using WitherAdvisor.Fields;
using WitherAdvisor.Loft.Outcomes;

namespace WitherAdvisor.Api.Outcomes;

/// <summary>An outcome as kept, with what follows from it. Null is unknown.</summary>
public sealed record OutcomeResponse : OutcomeRequest
{
    private const int Decimals = 2;

    [SetsRequiredMembers]
    internal OutcomeResponse(ReadOutcome outcome)
        : base(OutcomeMapping.ToRequest(outcome.Kept))
    {
        Batch = outcome.Kept.BatchId;
        EnteredAt = outcome.Kept.EnteredAt;
        OnTroughHours = Round(outcome.Computed.HoursOnTrough);
        OutturnPercent = Round(Percent.Of(outcome.Computed.Outturn));
        OutturnOfLeafPercent = Round(Percent.Of(outcome.Computed.OutturnOfLeaf));
    }

    /// <summary>The batch it is of.</summary>
    /// <example>0199d2b5-6f10-7c3a-9d4e-2f6a1b3c5d7e</example>
    [JsonPropertyOrder(-1)]
    public required string Batch { get; init; }

    /// <summary>When it was entered.</summary>
    /// <example>2026-03-02T06:15:00Z</example>
    public required DateTimeOffset EnteredAt { get; init; }

    /// <summary>From loading to unloading.</summary>
    /// <example>10.17</example>
    public required double? OnTroughHours { get; init; }

    /// <summary>Withered weight over green weight as weighed with its surface water.</summary>
    /// <example>47.62</example>
    public required double? OutturnPercent { get; init; }

    /// <summary>Withered weight over the weight of green leaf without its surface water, as measured or else as the advice estimated it.</summary>
    /// <example>53.33</example>
    public required double? OutturnOfLeafPercent { get; init; }

    private static double? Round(double? value) => value is { } known ? Math.Round(known, Decimals) : null;
}
