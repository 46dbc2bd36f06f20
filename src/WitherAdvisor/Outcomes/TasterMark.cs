namespace WitherAdvisor.Outcomes;

/// <summary>A taster's mark for the tea made of a batch.</summary>
/// <param name="Scale">Name of one of the site's scales.</param>
/// <param name="Mark">On that scale.</param>
public sealed record TasterMark(string Scale, double Mark);
