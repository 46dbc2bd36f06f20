using Microsoft.AspNetCore.Antiforgery;
using WitherAdvisor.Api.Pages.Forms;
using WitherAdvisor.Api.Pages.Home;
using WitherAdvisor.Loft.Kept.Sites;
using WitherAdvisor.Loft.Kept.Weather;
using WitherAdvisor.Readings.Sources;
using WitherAdvisor.Store;
using WitherAdvisor.Words.Units;

namespace WitherAdvisor.Api.Pages.Batches;

/// <summary>The page on which a batch is entered.</summary>
internal static class NewBatchEndpoints
{
    private const int DaysToLookBack = 10;

    public static async Task<IResult> Show(
        string site, string? trough, HttpContext http, ISiteStore sites, OnHand onHand, IWeatherStore weather, TimeProvider clock,
        CancellationToken cancel)
    {
        PageContext page = PageAnswer.Context(http, clock);
        if (await sites.FindSite(site, cancel) is not { } found)
        {
            return PageAnswer.Unknown("site", page);
        }

        IReadOnlyList<TroughOnHand> troughs = await onHand.At(site, page.Now, cancel);
        FilledForm form = new(BatchForm.Fresh(new WallClock(found.TimeZone), page.Now, trough), []);
        return await Draw(found, troughs, form, page, StatusCodes.Status200OK, weather, cancel);
    }

    public static async Task<IResult> Enter(
        string site, HttpContext http, ISiteStore sites, OnHand onHand, IWeatherStore weather, BatchEntry entry, IAntiforgery antiforgery,
        TimeProvider clock, CancellationToken cancel)
    {
        PageContext page = PageAnswer.Context(http, clock);
        if (await sites.FindSite(site, cancel) is not { } found)
        {
            return PageAnswer.Unknown("site", page);
        }

        PostedForm posted = await PostedForm.Read(http, antiforgery, cancel);
        page = page with { Units = UnitChoice.With(page.Units, posted.Typed.GetValueOrDefault) };
        IReadOnlyList<TroughOnHand> troughs = await onHand.At(site, page.Now, cancel);
        FormReader reader = new(page.Words, posted.Typed);
        if (!posted.Genuine)
        {
            reader.Refuse(BatchForm.Trough, page.Words["form.stale.title"], page.Words["form.stale.text"]);
            return await Draw(found, troughs, reader.Filled, page, StatusCodes.Status400BadRequest, weather, cancel);
        }

        EnteredBatch? entered = new BatchForm(found, [.. troughs.Select(one => one.Trough)], page.Units).Read(reader);
        return entered is null
            ? await Draw(found, troughs, reader.Filled, page, StatusCodes.Status422UnprocessableEntity, weather, cancel)
            : PageAnswer.SeeOther(http, $"/batches/{await entry.Take(site, entered, cancel)}");
    }

    private static async Task<IResult> Draw(
        StoredSite site, IReadOnlyList<TroughOnHand> troughs, FilledForm form, PageContext page, int status, IWeatherStore weather,
        CancellationToken cancel)
    {
        var rows = await weather.ReadSourced(site.Id, page.Now.AddDays(-DaysToLookBack), page.Now, cancel);
        DateTimeOffset? last = rows
            .LastOrDefault(row => row.Source == WeatherSource.Observed && row.Reading.DryBulbC is not null)?.Reading.Time;
        return PageAnswer.Of<NewBatchPage>(new { Site = site, Troughs = troughs, LastReading = last, Form = form, Page = page }, status);
    }
}
