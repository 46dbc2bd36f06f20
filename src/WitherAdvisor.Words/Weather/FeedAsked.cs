namespace WitherAdvisor.Words.Weather;

/// <summary>A time that a feed was asked for weather.</summary>
/// <param name="Refusal">Why it gave none, a sentence; null where it did.</param>
public sealed record FeedAsked(DateTimeOffset At, string? Refusal);
