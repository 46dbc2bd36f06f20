using Microsoft.AspNetCore.Antiforgery;
using Microsoft.AspNetCore.Http.HttpResults;
using WitherAdvisor.Api.Pages.Forms;
using WitherAdvisor.Api.Weather;
using WitherAdvisor.Loft.Kept.Sites;
using WitherAdvisor.Loft.Kept.Weather;
using WitherAdvisor.Loft.WeatherKeeping;
using WitherAdvisor.Loft;

namespace WitherAdvisor.Api.Pages.Upload;

/// <summary>The page on which a file of readings is given.</summary>
internal static class UploadEndpoints
{
    public static async Task<IResult> Show(string site, HttpContext http, ISiteStore sites, TimeProvider clock, CancellationToken cancel)
    {
        PageContext page = PageAnswer.Context(http, clock);
        return await sites.FindSite(site, cancel) is { } found
            ? Draw(found, new(UploadForm.Fresh, []), page)
            : PageAnswer.Unknown("site", page);
    }

    public static async Task<IResult> Enter(
        string site, HttpContext http, ISiteStore sites, WeatherEntry keeping, IAntiforgery antiforgery, TimeProvider clock,
        CancellationToken cancel)
    {
        PageContext page = PageAnswer.Context(http, clock);
        if (await sites.FindSite(site, cancel) is not { } found)
        {
            return PageAnswer.Unknown("site", page);
        }

        PostedForm posted = await PostedForm.Read(http, antiforgery, cancel);
        FormReader reader = new(page.Words, posted.Typed);
        if (!posted.Genuine)
        {
            reader.Refuse(UploadForm.File, page.Words["form.stale.title"], page.Words["form.stale.text"]);
            return Draw(found, reader.Filled, page, status: StatusCodes.Status400BadRequest);
        }

        WeatherKind kind = reader.Choice<WeatherKind>(UploadForm.Kind, page.Words["upload.kind"]) ?? WeatherKind.Observed;
        KeptRows keep = reader.Choice<KeptRows>(UploadForm.Keep, page.Words["upload.keep"]) ?? KeptRows.AllOrNone;
        DateTimeOffset? latest = kind == WeatherKind.Observed ? ObservedTimes.Latest(clock) : null;
        CsvTable? table = await UploadForm.Read(reader, keep, latest, http.Request.Form.Files.GetFile(UploadForm.File), cancel);
        if (table is null || reader.Problems.Count > 0)
        {
            return Draw(found, reader.Filled, page, status: StatusCodes.Status422UnprocessableEntity);
        }

        await keeping.Keep(site, WeatherKinds.ToSource(kind), [.. table.Good.Select(ReadingMapping.ToDomain)], cancel);
        return table.Refused.Count == 0
            ? PageAnswer.SeeOther(http, $"/sites/{Uri.EscapeDataString(site)}/weather")
            : Draw(found, reader.Filled, page, new UploadOutcome(table.Good.Count, table.Refused));
    }

    private static RazorComponentResult Draw(
        StoredSite site, FilledForm form, PageContext page, UploadOutcome? outcome = null, int status = StatusCodes.Status200OK) =>
        PageAnswer.Of<UploadPage>(new { Site = site, Form = form, Page = page, Outcome = outcome }, status);
}
