using WitherAdvisor.Api.Http;
using WitherAdvisor.Api.Pages.Forms;
using WitherAdvisor.Api.Weather;

namespace WitherAdvisor.Api.Pages.Upload;

/// <summary>The form on which a file of readings is given: names of its fields, what it starts with, and how it is read.</summary>
public static class UploadForm
{
    public const string File = "file";
    public const string Kind = "kind";
    public const string Keep = "keep";


    /// <summary>What an untouched form holds.</summary>
    public static IReadOnlyDictionary<string, string> Fresh { get; } = new Dictionary<string, string>(StringComparer.Ordinal)
    {
        [Kind] = nameof(WeatherKind.Observed),
        [Keep] = nameof(KeptRows.AllOrNone),
    };

    /// <summary>The table of a file; null where the reader found problems.</summary>
    /// <param name="latest">Last time that a reading may bear; null where any may.</param>
    internal static async Task<CsvTable?> Read(FormReader form, KeptRows keep, DateTimeOffset? latest, IFormFile? file, CancellationToken cancel)
    {
        if (file is null || file.Length == 0)
        {
            form.Refuse(File, form.Words["upload.file"], form.Words["upload.no_file"]);
            return null;
        }

        if (file.Length > BodyBytes.Most)
        {
            form.Refuse(File, form.Words["upload.file"], form.Words.Say("upload.too_long", ("bytes", file.Length), ("most", BodyBytes.Most)));
            return null;
        }

        using MemoryStream copy = new();
        await file.CopyToAsync(copy, cancel);
        Refusable<CsvTable> read = CsvReadings.Read(copy.ToArray(), keep, latest);
        if (read.Refusal is null)
        {
            return read.Value;
        }

        ProblemResponse problem = read.Refusal.Problem;
        foreach (string message in problem.Errors?.Select(error => error.Message) ?? [problem.Detail ?? problem.Title])
        {
            form.RefuseInEnglish(File, form.Words["upload.file"], message);
        }

        return null;
    }
}
