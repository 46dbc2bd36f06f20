namespace WitherAdvisor.Words;

/// <summary>Codes of the model in words; one that is not listed is still readable.</summary>
public static class Codes
{
    public static string Plain(string code) => code.Replace('_', ' ');

    public static string Sentence(string words) => words.Length == 0 ? words : char.ToUpperInvariant(words[0]) + words[1..];
}
