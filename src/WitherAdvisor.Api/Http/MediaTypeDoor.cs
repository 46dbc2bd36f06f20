using Microsoft.Net.Http.Headers;

namespace WitherAdvisor.Api.Http;

/// <summary>
/// Holds a body to the type that it says it is of. A type has to be said: a page of another site can send untyped text without asking,
/// JSON and CSV it cannot.
/// </summary>
internal static class MediaTypeDoor
{
    public const string Json = "application/json";
    public const string Csv = "text/csv";

    private const string Charset = "utf-8";

    /// <summary>Null where the body may be read.</summary>
    public static ProblemResult? Refuse(HttpRequest request, params IReadOnlyList<string> allowed) =>
        MediaTypeHeaderValue.TryParse(request.ContentType, out MediaTypeHeaderValue? type)
        && allowed.Any(one => type.MediaType.Equals(one, StringComparison.OrdinalIgnoreCase))
        && IsUtf8(type)
            ? null
            : DoorProblems.MediaType(request.ContentType, $"{string.Join(" or ", allowed)}, with charset={Charset} or none");

    public static bool IsCsv(HttpRequest request) =>
        MediaTypeHeaderValue.TryParse(request.ContentType, out MediaTypeHeaderValue? type)
        && type.MediaType.Equals(Csv, StringComparison.OrdinalIgnoreCase);

    private static bool IsUtf8(MediaTypeHeaderValue type) =>
        type.Parameters.All(parameter => !parameter.Name.Equals("charset", StringComparison.OrdinalIgnoreCase)
            || HeaderUtilities.RemoveQuotes(parameter.Value).Equals(Charset, StringComparison.OrdinalIgnoreCase));
}
