namespace WitherAdvisor.Api.Http;

/// <summary>A header as an answer shows it.</summary>
internal static class Shown
{
    private const int Longest = 100;

    public static string Of(string? given) => given switch
    {
        null => "missing",
        "" => "empty",
        { Length: > Longest } => given[..Longest] + "…",
        _ => given,
    };
}
