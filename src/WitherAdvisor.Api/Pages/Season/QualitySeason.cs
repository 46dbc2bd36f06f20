using WitherAdvisor.Spells;

namespace WitherAdvisor.Api.Pages.Season;

/// <summary>A run of days on which leaf of a dry windy spell was loaded.</summary>
public sealed record QualitySeason(DateOnly First, DateOnly Last, int Batches)
{
    /// <summary>A wet week does not end a season, a wet month does (common practice, no published source).</summary>
    private const int LongestGapDays = 21;

    public int Days => Last.DayNumber - First.DayNumber + 1;

    /// <summary>By start.</summary>
    /// <param name="days">By date.</param>
    public static IReadOnlyList<QualitySeason> In(IReadOnlyList<SeasonDay> days)
    {
        List<QualitySeason> seasons = [];
        foreach (SeasonDay day in days.Where(day => day.Spell == SpellKind.DryWindy))
        {
            if (seasons is [.., { } open] && day.Date.DayNumber - open.Last.DayNumber <= LongestGapDays)
            {
                seasons[^1] = open with { Last = day.Date, Batches = open.Batches + day.Batches };
            }
            else
            {
                seasons.Add(new(day.Date, day.Date, day.Batches));
            }
        }

        return seasons;
    }
}
