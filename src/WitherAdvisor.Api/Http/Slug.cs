using WitherAdvisor.Api.Input;

namespace WitherAdvisor.Api.Http;

/// <summary>Names in paths that callers choose.</summary>
internal static class Slug
{
    public const string Pattern = "^[a-z0-9]([a-z0-9-]*[a-z0-9])?$";
    public const int Longest = 40;

    public static TextShape Shape { get; } = new(Longest, Pattern);

    /// <summary>Null where the name will do.</summary>
    public static ProblemResult? Refuse(string field, string name) =>
        Shape.IsGood(name) ? null : Problem.InvalidInput(FieldError.Of(field, $"\"{name}\"", Shape.Allowed));
}
