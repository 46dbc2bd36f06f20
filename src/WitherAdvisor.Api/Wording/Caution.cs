namespace WitherAdvisor.Api.Wording;

/// <summary>Something that a person has to mind at the trough.</summary>
/// <param name="Short">For the printed card.</param>
/// <param name="Full">For the page.</param>
public sealed record Caution(string Short, string Full);
