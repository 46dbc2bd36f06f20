using System.Text;
using Microsoft.AspNetCore.Antiforgery;
using Microsoft.AspNetCore.Http.HttpResults;
using WitherAdvisor.Api.Outcomes.Import;
using WitherAdvisor.Api.Pages.Forms;
using WitherAdvisor.Loft.Importing;
using WitherAdvisor.Loft.Kept.Sites;
using WitherAdvisor.Store;
using WitherAdvisor.Words;

namespace WitherAdvisor.Api.Pages.Log;

/// <summary>
/// The page on which a paper log is imported: first a preview, then, from what was previewed and nothing else, the taking.
/// </summary>
internal static class ImportPageEndpoints
{
    public const string FileField = "file";
    public const string TextField = "csv";
    public const string OddField = "odd";

    /// <summary>It travels through the page once more; longer logs go through the interface.</summary>
    public const int MostBytes = 1024 * 1024;

    public static async Task<IResult> Show(string site, HttpContext http, ISiteStore sites, TimeProvider clock, CancellationToken cancel)
    {
        PageContext page = PageAnswer.Context(http, clock);
        return await sites.FindSite(site, cancel) is { } found
            ? PageAnswer.Of<ImportPage>(new { Site = found, Page = page })
            : PageAnswer.Unknown("site", page);
    }

    public static async Task<IResult> Enter(
        string site, HttpContext http, ISiteStore sites, CsvImport import, IAntiforgery antiforgery, TimeProvider clock, CancellationToken cancel)
    {
        PageContext page = PageAnswer.Context(http, clock);
        if (await sites.FindSite(site, cancel) is not { } found)
        {
            return PageAnswer.Unknown("site", page);
        }

        PostedForm posted = await PostedForm.Read(http, antiforgery, cancel);
        if (!posted.Genuine)
        {
            return PageAnswer.Stale(page);
        }

        bool takes = posted.Typed.TryGetValue(TextField, out string? text);
        byte[] csv = takes ? Encoding.UTF8.GetBytes(text!) : await Uploaded(http, cancel);
        if (csv.Length is 0 or > MostBytes)
        {
            return Draw(found, page, null, null, page.Words.Say("import.size", ("most", MostBytes / 1024)), page.Words.Tag);
        }

        using MemoryStream stream = new(csv);
        OddRows odd = posted.Typed.ContainsKey(OddField) ? OddRows.Confirm : OddRows.Ask;
        ImportQuery asked = new() { Mode = takes ? ImportMode.Take : ImportMode.Preview, Keep = KeepRows.GoodRows, Odd = odd };
        Imported imported = await import.Run(site, stream, asked, RowWording.OfPages(page.Words), cancel);
        return Draw(found, page, imported.Answer, takes ? null : csv, imported.Refusal?.Problem.Detail, Wordbook.English.Tag);
    }

    private static async Task<byte[]> Uploaded(HttpContext http, CancellationToken cancel)
    {
        IFormFile? file = (await http.Request.ReadFormAsync(cancel)).Files.GetFile(FileField);
        if (file is null || file.Length > MostBytes)
        {
            return [];
        }

        using MemoryStream whole = new();
        await file.CopyToAsync(whole, cancel);
        return whole.ToArray();
    }

    private static RazorComponentResult Draw(StoredSite site, PageContext page, ImportResponse? answer, byte[]? previewed, string? problem, string language) =>
        PageAnswer.Of<ImportPage>(
            new { Site = site, Page = page, Answer = answer, Previewed = Text(previewed, problem), Problem = problem, ProblemLanguage = language },
            problem is null ? StatusCodes.Status200OK : StatusCodes.Status422UnprocessableEntity);

    // A file that was refused as a whole may not even be text.
    private static string? Text(byte[]? csv, string? problem) => csv is null || problem is not null ? null : Encoding.UTF8.GetString(csv);
}
