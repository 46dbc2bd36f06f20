namespace WitherAdvisor.Api.Advice.Responses;

/// <summary>A caution to be shown with every advice.</summary>
public sealed record CautionResponse
{
    /// <summary>Its name.</summary>
    /// <example>fan_locked_off</example>
    public required string Code { get; init; }

    /// <summary>A sentence for people.</summary>
    /// <example>Stop the fan and lock it off before anyone reaches into a trough or stands on it. Guards stay on fan and belts.</example>
    public required string Text { get; init; }
}
