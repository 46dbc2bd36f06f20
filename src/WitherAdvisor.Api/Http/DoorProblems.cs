namespace WitherAdvisor.Api.Http;

/// <summary>Why a request is turned away before anything of it is read.</summary>
internal static class DoorProblems
{
    public static ProblemResult UnknownHost(string detail) => Problem.Named(
        "unknown-host", "The host name is not known.", StatusCodes.Status421MisdirectedRequest, detail);

    public static ProblemResult ForeignOrigin(string detail) => Problem.Named(
        "foreign-origin", "Changes from other sites are not accepted.", StatusCodes.Status403Forbidden, detail);

    public static ProblemResult BadPath() => Problem.Named(
        "bad-path", "The path is not valid text.", StatusCodes.Status400BadRequest,
        "The path holds a control character or a percent sequence that stands for no character; allowed is printable text in UTF-8.");

    public static ProblemResult MediaType(string? given, string allowed) => Problem.Named(
        "media-type", "The content type is wrong.", StatusCodes.Status415UnsupportedMediaType,
        $"Content-Type is {Shown.Of(given)}; allowed is {allowed}.");
}
