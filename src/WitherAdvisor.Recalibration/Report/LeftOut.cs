namespace WitherAdvisor.Recalibration.Report;

/// <summary>An outcome that was not used.</summary>
/// <param name="Id">Of the outcome.</param>
/// <param name="Reason">Why not.</param>
public sealed record LeftOut(string Id, LeftOutReason Reason);
