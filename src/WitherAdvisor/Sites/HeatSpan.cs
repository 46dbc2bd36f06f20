namespace WitherAdvisor.Sites;

/// <summary>A time with heat.</summary>
public readonly record struct HeatSpan(DateTimeOffset From, DateTimeOffset To);
