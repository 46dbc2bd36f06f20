using WitherAdvisor.Fields;

namespace WitherAdvisor.Api.Http;

/// <summary>Names in paths that callers choose.</summary>
internal static class NameInPath
{
    /// <summary>Null where the name will do.</summary>
    public static ProblemResult? Refuse(string field, string name) =>
        Slug.Shape.IsGood(name) ? null : Problem.InvalidInput(FieldError.Of(field, $"\"{name}\"", Slug.Shape.Allowed));
}
