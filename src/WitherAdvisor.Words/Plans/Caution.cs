namespace WitherAdvisor.Words.Plans;

/// <summary>Something that a person has to mind at the trough.</summary>
/// <param name="Code">snake_case name, for systems that show their own words.</param>
/// <param name="Short">For the printed card.</param>
/// <param name="Full">For the page.</param>
public sealed record Caution(string Code, string Short, string Full);
