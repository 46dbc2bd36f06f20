using System.Net;
using WitherAdvisor.Api.Pages.Batches;
using WitherAdvisor.Api.Pages.Closing;
using WitherAdvisor.Api.Pages.Forms;
using WitherAdvisor.Api.Tests.Pages;
using WitherAdvisor.Api.Tests.Recalibration;
using WitherAdvisor.SyntheticSeasons;

namespace WitherAdvisor.Api.Tests.Wording;

/// <summary>Every page in a language made up of English written backwards: an English word on it came past the table.</summary>
public sealed class EveryPageSpeaksTests : IDisposable
{
    /// <summary>Units, file formats, zones and our own name; letters of the season's calendar.</summary>
    private static readonly string[] EverywhereTheSame =
        ["witheradvisor", "hpa", "kpa", "kwh", "csv", "utc", "etc", "asia", "colombo", "parquet", "english", "defaults", "learned", "min", "wmo"];

    /// <summary>Pages that hold something English, and say so: a document.</summary>
    private static readonly string[] PartlyEnglish = ["/model"];

    private readonly MadeUpLanguageHost service = new();

    [Fact]
    public async Task A_literal_that_came_past_the_table_is_found()
    {
        await service.WithEstate();
        string html = await service.Host.Page("/");

        Assert.Empty(English(html, await Names()));
        Assert.Equal(["night"], English(html.Replace("</main>", "<p>night</p></main>", StringComparison.Ordinal), await Names()));
        Assert.Equal(["night"], English(html.Replace("<main ", "<main title=\"night\" ", StringComparison.Ordinal), await Names()));
        Assert.NotEmpty(English(await InEnglish("/"), await Names()));
    }

    [Fact]
    public async Task Pages_of_the_invented_estate()
    {
        await service.WithEstate();
        string[] batches = await service.Batches();
        string[] pages =
        [
            "/", "/model", "/sites/nowhere/weather", "/batches/nothing",
            .. batches.SelectMany(batch => new[] { $"/batches/{batch}", $"/batches/{batch}/outcome" }),
            .. new[] { "/batches/new", "/weather", "/weather?at=2026-06-19T13:00:00Z", "/weather/new", "/weather/upload", "/outcomes", "/outcomes?from=never", "/outcomes/import", "/calibration", "/season" }
                .Select(page => MadeUpLanguageHost.Site + page),
        ];

        IReadOnlySet<string> names = await Names();
        foreach (string page in pages)
        {
            await Speaks(page, names);
        }
    }

    [Fact]
    public async Task A_service_without_a_site_tells_how_to_begin()
    {
        service.Host.Browser.DefaultRequestHeaders.AcceptLanguage.ParseAdd(MadeUpLanguage.Tag);

        await Speaks("/", new HashSet<string>());
    }

    [Fact]
    public async Task Forms_with_every_kind_of_fault()
    {
        await service.WithEstate();
        IReadOnlySet<string> names = await Names();

        await SpeaksOf(MadeUpLanguageHost.Site + "/batches/new", "", names);
        await SpeaksOf(MadeUpLanguageHost.Site + "/batches/new", "", names, PageHost.Batch((BatchForm.Trough, "t9"), (BatchForm.GreenWeight, "1,5"), (TimeFields.Time(BatchForm.PluckedTo), "25:99"), ("wet_bulb", "19")));
        await SpeaksOf(MadeUpLanguageHost.Site + "/batches/new", "", names, PageHost.Batch((BatchForm.GreenWeight, "99999"), (TimeFields.Time(BatchForm.PluckedTo), "06:00"), (BatchForm.Feel, "000"), ("rain_10_days", "1")));
        await SpeaksOf(MadeUpLanguageHost.Site + "/batches/new", "", names, PageHost.Batch((TimeFields.Date(BatchForm.PluckedFrom), "2026-07-01"), (TimeFields.Time(BatchForm.LoadedAt), "11:00"), (BatchForm.Division, new string('7', 99)), ("wet_bulb", "1")));
        await SpeaksOf(MadeUpLanguageHost.Site + "/weather/new", "", names, ("read_at_date", "2027-01-01"), ("read_at_time", "08:00"), ("rain", "4"));
        await SpeaksOf(MadeUpLanguageHost.Site + "/weather/new", "", names, ("read_at_date", "2026-06-19"), ("read_at_time", "08:00"), ("wet_bulb", "4"));
        string batch = $"/batches/{(await service.Batches())[0]}";
        await SpeaksOf(batch, "/cancelled", names, Time(ClosingForm.CancelledAt, "xx"));
        await SpeaksOf(batch, "/advice", names, ("__RequestVerificationToken", "000"));
    }

    [Fact]
    public async Task A_batch_that_was_advised_none_that_ended_and_that_has_a_result()
    {
        await service.WithEstate();
        IReadOnlySet<string> names = await Names();
        string batch = $"/batches/{(await service.Batches())[0]}";
        (await service.Host.Send(batch, batch + "/unload")).Dispose();
        await Speaks(batch, names);
        await Speaks(batch + "/outcome", names);
        await SpeaksOf(batch + "/outcome", "", names, ("withered_weight_kg", "000"), ("turned_at_hours", "00; 99x"), ("sample_weighings[0].hour", "2"), ("air_set[0].dry_bulb_c", "990"), ("marks[0].mark", "7"));
        await SpeaksOf(batch + "/outcome", "", names, ("withered_weight_kg", "999"), ("oven_moisture_wet_basis_percent", "60"), ("verdict", "Right"));
        await Speaks(MadeUpLanguageHost.Site + "/outcomes", names);

        string refused = await Entered(("dry_bulb", ""), ("wet_bulb", ""), ("instrument", ""), (BatchForm.ReadyBy + "_date", ""), (BatchForm.Trough, "trough-2"));
        names = await Names();
        await Speaks(refused, names);
        (await service.Host.Send(refused, refused + "/cancelled", [.. Time(ClosingForm.CancelledAt, "20:40"), (ClosingForm.CancelReason, "000")])).Dispose();
        await Speaks(refused, names);
    }

    [Fact]
    public async Task Logs_and_readings_that_are_taken_in_part()
    {
        await service.WithEstate();
        IReadOnlySet<string> names = await Names();
        const string Log = "loaded_at,trough,division,field,green_weight_kg,on_trough_hours,withered_weight_kg\n"
            + "2025-06-01 17:30,trough-1,0,7,1200,11,580\n2025-06-02 17:30,trough-1,0,8,1200,2,580\n2025-06-03 17:30,t9,0,9,1200,11,580\n";
        const string Readings = "time,dry_bulb_c,wet_bulb_c,instrument\n2026-06-19T10:00:00Z,19,17,sling\n2026-06-19T11:00:00Z,19,18,xxx\n";

        Spoken(await Upload(MadeUpLanguageHost.Site + "/outcomes/import", Log), names);
        Spoken(await Upload(MadeUpLanguageHost.Site + "/outcomes/import", ""), names);
        Spoken(await Upload(MadeUpLanguageHost.Site + "/weather/upload", Readings, ("kind", "Observed"), ("keep", "GoodRows")), names);
        Spoken(await Upload(MadeUpLanguageHost.Site + "/weather/upload", Readings, ("kind", "Observed"), ("keep", "AllOrNone")), names);
        Spoken(await Upload(MadeUpLanguageHost.Site + "/weather/upload", "", ("kind", "000"), ("keep", "000")), names);
    }

    [Fact]
    public async Task A_site_that_has_learned()
    {
        await service.WithEstate();
        LoftWithPast loft = await LoftWithPast.Open(service.Caller, PastOfLoft.Make(outcomes: 40, days: 150, seed: 11));
        await loft.Recalibrate();
        string site = $"/sites/{loft.Loft.Site}";
        IReadOnlySet<string> names = await service.Named("/v1/sites", $"{loft.Path}/troughs", $"{loft.Path}/batches", $"{loft.Path}/coefficient-sets");

        foreach (string page in new[] { "/calibration", "/outcomes", "/season", "/weather" })
        {
            await Speaks(site + page, names);
        }

        await SpeaksOf(site + "/calibration", "/adopt", names, ("set", "learned-1"), ("adopted_by", new string('7', 99)));
    }

    public void Dispose() => service.Dispose();

    private static (string, string)[] Time(string field, string time) => [(TimeFields.Date(field), "2026-06-19"), (TimeFields.Time(field), time)];

    private static string[] English(string html, IReadOnlySet<string> names) =>
    [
        .. VisibleWords.OfPage(html).Distinct(StringComparer.Ordinal).Where(word =>
            !MadeUpLanguage.Words.Contains(word) && !names.Contains(word) && !EverywhereTheSame.Contains(word) && word.Any(letter => letter is not ('d' or 'w' or 'o'))),
    ];

    private static void Spoken(string html, IReadOnlySet<string> names, string? page = null)
    {
        Assert.Contains($"<html lang=\"{MadeUpLanguage.Tag}\"", html, StringComparison.Ordinal);
        Assert.True(English(html, names) is [], $"{page}: {string.Join(", ", English(html, names))}");
    }

    private Task<IReadOnlySet<string>> Names() =>
        service.Named("/v1/sites", $"/v1{MadeUpLanguageHost.Site}/troughs", $"/v1{MadeUpLanguageHost.Site}/batches");

    private async Task Speaks(string page, IReadOnlySet<string> names)
    {
        using HttpResponseMessage answer = await service.Host.Browser.GetAsync(new Uri(page, UriKind.Relative), TestContext.Current.CancellationToken);
        if (answer.StatusCode != HttpStatusCode.SeeOther)
        {
            string html = await answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken);
            Spoken(html, names, page);
            Assert.True(PartlyEnglish.Contains(page) == InEnglishByItsMark(html), page + ": " + Marked(html));
        }
    }

    /// <summary>What stands behind the first such mark.</summary>
    private static string Marked(string html) =>
        html.IndexOf(" lang=\"en\"", html.IndexOf("<main ", StringComparison.Ordinal), StringComparison.Ordinal) is >= 0 and var at ? html.Substring(at, Math.Min(300, html.Length - at)) : "nothing is marked";

    /// <summary>Whether anything on a page is marked as English, which the words of a page are not looked for in.</summary>
    private static bool InEnglishByItsMark(string html) =>
        html[html.IndexOf("<main ", StringComparison.Ordinal)..html.IndexOf("</main>", StringComparison.Ordinal)].Contains(" lang=\"en\"", StringComparison.Ordinal);

    /// <summary>What the answer to a form says that is not taken.</summary>
    private async Task SpeaksOf(string page, string target, IReadOnlySet<string> names, params (string Field, string Typed)[] typed)
    {
        using HttpResponseMessage answer = await service.Host.Send(page, page + target, typed);
        if (answer.StatusCode != HttpStatusCode.SeeOther)
        {
            Spoken(await answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken), names, page + target);
        }
    }

    private async Task<string> Entered(params (string Field, string Typed)[] changes)
    {
        (string, string)[] batch = PageHost.Batch(changes);
        using HttpResponseMessage answer = await service.Host.Send(MadeUpLanguageHost.Site + "/batches/new", MadeUpLanguageHost.Site + "/batches/new", batch);
        Assert.Equal(HttpStatusCode.SeeOther, answer.StatusCode);
        return answer.Headers.Location!.OriginalString;
    }

    private async Task<string> InEnglish(string page)
    {
        using HttpResponseMessage answer = await service.Host.Browser.GetAsync(new Uri(page + "?language=en", UriKind.Relative), TestContext.Current.CancellationToken);
        return await answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken);
    }

    private async Task<string> Upload(string page, string csv, params (string Field, string Typed)[] fields)
    {
        using HttpResponseMessage answer = await service.Host.SendFile(page, csv, fields);
        return await answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken);
    }
}
