namespace WitherAdvisor.Recalibration.Report;

/// <summary>An outcome that was not used.</summary>
/// <param name="Id">Of the outcome.</param>
/// <param name="Code">snake_case reason.</param>
/// <param name="Text">A sentence for people.</param>
public sealed record LeftOut(string Id, string Code, string Text);
