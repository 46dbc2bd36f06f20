using WitherAdvisor.Api.Sites;
using WitherAdvisor.Loft.Kept.Outcomes;
using WitherAdvisor.Loft.Kept.Sites;
using WitherAdvisor.Loft.Outcomes;
using WitherAdvisor.Loft.Sites;
using WitherAdvisor.Spells;

namespace WitherAdvisor.Api.Pages.Season;

/// <summary>The page on which a site's seasons are seen, year against year.</summary>
internal static class SeasonEndpoints
{
    /// <summary>On one page to compare.</summary>
    private const int MostYears = 6;

    public static async Task<IResult> Show(
        string site, HttpContext http, ISiteStore sites, IOutcomeStore outcomes, TimeProvider clock, CancellationToken cancel)
    {
        PageContext page = PageAnswer.Context(http, clock);
        if (await sites.FindSite(site, cancel) is not { } found)
        {
            return PageAnswer.Unknown("site", page);
        }

        SiteClock wall = new(found.TimeZone);
        DateTimeOffset from = new(wall.Local(page.Now).Year - MostYears + 1, 1, 1, 0, 0, 0, TimeSpan.Zero);
        Dictionary<DateOnly, Dictionary<SpellKind, int>> known = [];
        Dictionary<DateOnly, int> all = [];
        await foreach (LoadedBatch batch in outcomes.Loaded(site, from.AddDays(-1), cancel))
        {
            DateOnly date = DateOnly.FromDateTime(wall.Local(batch.LoadedAt).DateTime);
            all[date] = all.GetValueOrDefault(date) + 1;
            if (SpellWord.Read(batch.Spell) is { } spell)
            {
                Dictionary<SpellKind, int> spells = known.TryGetValue(date, out Dictionary<SpellKind, int>? there) ? there : known[date] = [];
                spells[spell] = spells.GetValueOrDefault(spell) + 1;
            }
        }

        IReadOnlyList<SeasonDay> days =
        [
            .. all.Where(day => day.Key.Year >= from.Year).OrderBy(day => day.Key)
                .Select(day => new SeasonDay(day.Key, known.TryGetValue(day.Key, out var spells) ? spells.MaxBy(spell => spell.Value).Key : null, day.Value)),
        ];
        return PageAnswer.Of<SeasonPage>(new { Site = found, Days = days, Page = page });
    }
}
