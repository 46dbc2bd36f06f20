namespace WitherAdvisor.Documentation;

/// <summary>An equation that the model is made of.</summary>
/// <param name="Code">snake_case name.</param>
/// <param name="Topic">What part of the model it belongs to.</param>
/// <param name="Formula">As text; null for a rule that only words tell.</param>
/// <param name="Source">Author, year, equation.</param>
public sealed record ModelEquation(string Code, ModelTopic Topic, string? Formula, string Source);
