using WitherAdvisor.Loft.Kept.Outcomes;
using WitherAdvisor.Loft.Kept.Sites;
using WitherAdvisor.Store;
using WitherAdvisor.Words.Units;

namespace WitherAdvisor.Api.Pages.Log;

/// <summary>The page of a site's log.</summary>
internal static class LogEndpoints
{
    /// <summary>A page of more is no page; the whole log is in its exports.</summary>
    public const int MostShown = 200;

    public static async Task<IResult> Show(
        string site, HttpContext http, ISiteStore sites, IOutcomeStore outcomes, TimeProvider clock, CancellationToken cancel)
    {
        PageContext page = PageAnswer.Context(http, clock);
        if (await sites.FindSite(site, cancel) is not { } found)
        {
            return PageAnswer.Unknown("site", page);
        }

        LogChoice choice = LogChoice.Read(http.Request.Query, new WallClock(found.TimeZone), page.Words);
        List<LoggedOutcome> lines = [];
        await foreach (LoggedOutcome line in outcomes.Log(site, choice.Filter, cancel))
        {
            lines.Add(line);
            if (lines.Count > MostShown)
            {
                break;
            }
        }

        return PageAnswer.Of<LogPage>(new { Site = found, Chosen = choice, Lines = lines, Page = page });
    }
}
