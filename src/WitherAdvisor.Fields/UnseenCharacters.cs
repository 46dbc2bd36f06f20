namespace WitherAdvisor.Fields;

/// <summary>Characters that show as nothing: they turn the text round them about, or make two names that look the same.</summary>
internal static class UnseenCharacters
{
    private const char NonJoiner = '\u200C';
    private const char Joiner = '\u200D';

    public static bool AnyIn(string text) => text.Where((one, at) => IsUnseen(one) || (IsJoiner(one) && !Joins(text, at))).Any();

    private static bool IsUnseen(char one) => one
        is '\u200B' or '\u200E' or '\u200F' or '\u061C' or '\u2028' or '\u2029' or '\uFEFF'
        or (>= '\u202A' and <= '\u202E') or (>= '\u2060' and <= '\u2069');

    private static bool IsJoiner(char one) => one is NonJoiner or Joiner;

    /// <summary>Sinhala, Hindi and Persian spell words with joiners, after a letter or sign of theirs.</summary>
    private static bool Joins(string text, int at) =>
        at > 0 && at < text.Length - 1 && text[at - 1] > '\u02FF' && !IsJoiner(text[at - 1]);
}
