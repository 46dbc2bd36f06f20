namespace WitherAdvisor.Fields;

/// <summary>Names in paths that callers choose.</summary>
internal static class Slug
{
    public const string Pattern = "^[a-z0-9]([a-z0-9-]*[a-z0-9])?$";
    public const int Longest = 40;

    public static TextShape Shape { get; } = new(Longest, Pattern);
}
