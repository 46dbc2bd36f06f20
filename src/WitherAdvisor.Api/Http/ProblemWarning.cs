namespace WitherAdvisor.Api.Http;

/// <summary>Something in a request that can be but seldom is. Sent again with its code confirmed, the request is taken.</summary>
public sealed record ProblemWarning
{
    /// <summary>To confirm it by.</summary>
    /// <example>air_too_hot</example>
    public required string Code { get; init; }

    /// <summary>Where, as the caller wrote it.</summary>
    /// <example>air_set[0].dry_bulb_c</example>
    public required string Field { get; init; }

    /// <summary>A sentence for people.</summary>
    /// <example>air_set[0].dry_bulb_c is 36 °C; leaf reddens above 35 °C.</example>
    public required string Text { get; init; }
}
