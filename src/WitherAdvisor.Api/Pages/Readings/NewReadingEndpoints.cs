using Microsoft.AspNetCore.Antiforgery;
using Microsoft.AspNetCore.Http.HttpResults;
using WitherAdvisor.Api.Pages.Forms;
using WitherAdvisor.Loft;
using WitherAdvisor.Loft.Kept.Sites;
using WitherAdvisor.Loft.Kept.Weather;
using WitherAdvisor.Loft.WeatherKeeping;
using WitherAdvisor.Readings.Sources;
using WitherAdvisor.Store;
using WitherAdvisor.Words.Units;

namespace WitherAdvisor.Api.Pages.Readings;

/// <summary>The page on which a reading of the air or the rain gauge is entered.</summary>
internal static class NewReadingEndpoints
{
    public static async Task<IResult> Show(string site, HttpContext http, ISiteStore sites, TimeProvider clock, CancellationToken cancel)
    {
        PageContext page = PageAnswer.Context(http, clock);
        return await sites.FindSite(site, cancel) is { } found
            ? Draw(found, new(ReadingForm.Fresh(new WallClock(found.TimeZone), page.Now), []), page, StatusCodes.Status200OK)
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
        page = page with { Units = UnitChoice.With(page.Units, posted.Typed.GetValueOrDefault) };
        FormReader reader = new(page.Words, posted.Typed);
        if (!posted.Genuine)
        {
            reader.Refuse(ReadingForm.ReadAt, page.Words["form.stale.title"], page.Words["form.stale.text"]);
            return Draw(found, reader.Filled, page, StatusCodes.Status400BadRequest);
        }

        if (new ReadingForm(found, page.Units).Read(reader, page.Now) is not { } entered)
        {
            return Draw(found, reader.Filled, page, StatusCodes.Status422UnprocessableEntity);
        }

        await Keep(site, entered, keeping, cancel);
        return PageAnswer.SeeOther(http, "/");
    }

    private static async Task Keep(
        string siteId, EnteredReading entered, WeatherEntry keeping, CancellationToken cancel)
    {
        if (entered.Air is { } air)
        {
            await keeping.Keep(siteId, WeatherSource.Observed, [air], cancel);
        }

        if (entered.Rain is { } rain)
        {
            await keeping.Keep(siteId, [rain], cancel);
        }
    }

    private static RazorComponentResult Draw(StoredSite site, FilledForm form, PageContext page, int status) =>
        PageAnswer.Of<NewReadingPage>(new { Site = site, Form = form, Page = page }, status);
}
