namespace WitherAdvisor.Words;

/// <summary>A piece of a text: words, or a gap with the forms that a count chooses from.</summary>
/// <param name="Text">The words, or the name of the gap.</param>
/// <param name="Forms">Empty where the gap takes its value as it is.</param>
internal sealed record PatternPart(bool IsGap, string Text, IReadOnlyList<Pattern> Forms);
