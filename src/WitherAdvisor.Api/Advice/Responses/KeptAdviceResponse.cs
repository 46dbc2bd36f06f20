using System.Text.Json.Serialization;
using WitherAdvisor.Api.Http;
using WitherAdvisor.Loft.Kept.Batches;

namespace WitherAdvisor.Api.Advice.Responses;

/// <summary>An advice as kept. Its inputs and a replay are found under its id.</summary>
public record KeptAdviceResponse
{
    /// <summary>Made by the service.</summary>
    /// <example>0199d2b5-7021-7b1c-8e5f-4a7b2c6d8e9f</example>
    public required string Id { get; init; }

    /// <summary>The batch it is for.</summary>
    /// <example>0199d2b5-6f10-7c3a-9d4e-2f6a1b3c5d7e</example>
    public required string Batch { get; init; }

    /// <summary>When it was made.</summary>
    /// <example>2026-03-01T13:05:00Z</example>
    public required DateTimeOffset MadeAt { get; init; }

    /// <summary>The advice, byte for byte as it was first given.</summary>
    [JsonConverter(typeof(KeptJsonConverter))]
    [ShownAs(typeof(AdviceResponse))]
    public required string Advice { get; init; }

    internal static KeptAdviceResponse Of(KeptAdvice stored) => new()
    {
        Id = stored.Id,
        Batch = stored.BatchId,
        MadeAt = stored.MadeAt,
        Advice = stored.AnswerJson,
    };
}
