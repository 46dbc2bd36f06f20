using Microsoft.AspNetCore.WebUtilities;
using WitherAdvisor.Fields;

namespace WitherAdvisor.Api.Http;

/// <summary>The problems this service answers with.</summary>
internal static class Problem
{
    public const int MostErrorsShown = 50;

    public static ProblemResult InvalidInput(
        IReadOnlyCollection<FieldError> errors, IReadOnlyList<ProblemWarning>? warnings = null) => new(new()
        {
            Type = Urn("invalid-input"),
            Title = "The request has errors.",
            Status = StatusCodes.Status400BadRequest,
            Detail = $"{errors.Count} {(errors.Count == 1 ? "field does" : "fields do")} not fit: {errors.First().Message}",
            Errors = [.. errors.Take(MostErrorsShown)],
            Warnings = warnings is { Count: > 0 } ? warnings : null,
        });

    public static ProblemResult InvalidInput(FieldError error) => InvalidInput([error]);

    public static ProblemResult Malformed(string detail) =>
        Named("malformed-body", "The body cannot be read.", StatusCodes.Status400BadRequest, detail);

    /// <summary>There is no such site, trough, batch or advice.</summary>
    public static ProblemResult Unknown(string noun, string id) =>
        Named("unknown-" + noun, $"There is no such {noun}.", StatusCodes.Status404NotFound, $"No {noun} is called '{id}'.");

    public static ProblemResult Conflict(string code, string title, string detail) =>
        Named(code, title, StatusCodes.Status409Conflict, detail);

    /// <summary>It is kept here, and cannot be read.</summary>
    public static ProblemResult Unreadable(string code, string title, string detail) =>
        Named(code, title, StatusCodes.Status422UnprocessableEntity, detail);

    /// <summary>Nothing is wrong, but something looks odd and nobody has confirmed that it is so.</summary>
    public static ProblemResult Unusual(IReadOnlyList<ProblemWarning> warnings) => new(
        Answer(
            "unusual-outcome", "This looks odd; nothing was kept.", StatusCodes.Status409Conflict,
            $"Correct it or send it again with these codes in confirm: {string.Join(", ", warnings.Select(warning => warning.Code).Distinct())}.")
        with
        {
            Warnings = warnings,
        });

    public static ProblemResult TooLarge(int mostBytes) =>
        Named("body-too-large", "The body is too large.", StatusCodes.Status413PayloadTooLarge, $"At most {mostBytes} bytes are allowed.");

    public static ProblemResult OfStatus(int status) => new(new()
    {
        Type = "about:blank",
        Title = ReasonPhrases.GetReasonPhrase(status) is { Length: > 0 } reason ? reason : "Problem",
        Status = status,
    });

    public static ProblemResult Named(string code, string title, int status, string detail) => new(Answer(code, title, status, detail));

    private static ProblemResponse Answer(string code, string title, int status, string detail) =>
        new() { Type = Urn(code), Title = title, Status = status, Detail = detail };

    private static string Urn(string code) => "urn:witheradvisor:problem:" + code;
}
