using WitherAdvisor.Spells;
using WitherAdvisor.Words;
using WitherAdvisor.Words.Units;

namespace WitherAdvisor.Api.Pages.Season;

/// <summary>A year on the calendar: a line of letters a month, a letter a day.</summary>
public sealed class SeasonYear(int year, IReadOnlyDictionary<DateOnly, SeasonDay> days)
{
    public const char NoBatch = '·';

    private const int Months = 12;

    public int Year => year;

    /// <summary>Batches of a spell in the year; null for those of which no advice says.</summary>
    public int Batches(SpellKind? spell) => days.Values.Where(day => day.Date.Year == year && day.Spell == spell).Sum(day => day.Batches);

    public IEnumerable<string> Lines(Wordbook words) => Enumerable.Range(1, Months).Select(month =>
        $"{CalendarDates.Month(words, month)} {string.Concat(Enumerable.Range(1, DateTime.DaysInMonth(year, month)).Select(day => Letter(new DateOnly(year, month, day))))}");

    public static char Letter(SpellKind? spell) => spell switch
    {
        SpellKind.DryWindy => 'D',
        SpellKind.Wet => 'w',
        SpellKind.Ordinary => 'o',
        _ => '?',
    };

    private char Letter(DateOnly date) => days.TryGetValue(date, out SeasonDay? day) ? Letter(day.Spell) : NoBatch;
}
