namespace WitherAdvisor.Api.Advice.Answers;

/// <summary>A caution to be shown with every advice.</summary>
public sealed record CautionAnswer
{
    /// <summary>Its name.</summary>
    /// <example>fan_locked_off</example>
    public required string Code { get; init; }

    /// <summary>A sentence for people.</summary>
    /// <example>Stop and lock off the fan before anyone reaches into or stands on a trough.</example>
    public required string Text { get; init; }
}
