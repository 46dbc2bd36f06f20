namespace WitherAdvisor.Loft.Kept.Batches;

/// <summary>An advice just made, and the figures that a log tells of it: kept together.</summary>
public sealed record MadeAdvice(KeptAdvice Kept, AdviceFigures Figures);
