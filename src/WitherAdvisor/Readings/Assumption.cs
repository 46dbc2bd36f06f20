namespace WitherAdvisor.Readings;

/// <summary>Something not known, and what was taken in its place.</summary>
/// <param name="Code">snake_case, for example "no_forecast".</param>
/// <param name="Text">A sentence for people, SI units.</param>
public sealed record Assumption(string Code, string Text);
