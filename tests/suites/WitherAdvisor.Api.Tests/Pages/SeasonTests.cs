using WitherAdvisor.Api.Pages.Season;
using WitherAdvisor.Spells;
using WitherAdvisor.Words;
using Xunit;

namespace WitherAdvisor.Api.Tests.Pages;

public sealed class SeasonTests
{
    [Fact]
    public void A_quality_season_is_a_run_of_dry_windy_days_that_a_wet_week_does_not_end()
    {
        SeasonDay[] days =
        [
            Day(2025, 7, 20, SpellKind.DryWindy, 3), Day(2025, 7, 22, SpellKind.Wet, 9), Day(2025, 8, 10, SpellKind.DryWindy, 2),
            Day(2025, 9, 15, SpellKind.Ordinary, 4), Day(2026, 1, 5, SpellKind.DryWindy, 1),
        ];

        Assert.Equal(
            [new QualitySeason(new(2025, 7, 20), new(2025, 8, 10), 5), new QualitySeason(new(2026, 1, 5), new(2026, 1, 5), 1)],
            QualitySeason.In(days));
        Assert.Equal([22, 1], QualitySeason.In(days).Select(season => season.Days));
    }

    [Fact]
    public void A_year_is_a_line_a_month_and_a_letter_a_day()
    {
        Dictionary<DateOnly, SeasonDay> days = new[]
        {
            Day(2024, 2, 1, SpellKind.DryWindy, 3), Day(2024, 2, 3, SpellKind.Wet, 2), Day(2024, 2, 4, SpellKind.Ordinary, 1), Day(2024, 2, 29, null, 7),
            Day(2025, 2, 1, SpellKind.Wet, 5),
        }.ToDictionary(day => day.Date);
        SeasonYear year = new(2024, days);

        Assert.Equal(12, year.Lines(Wordbook.English).Count());
        Assert.Equal("Feb D·wo" + new string(SeasonYear.NoBatch, 24) + "?", year.Lines(Wordbook.English).ElementAt(1));
        Assert.Equal((3, 2, 7), (year.Batches(SpellKind.DryWindy), year.Batches(SpellKind.Wet), year.Batches(null)));
    }

    [Fact]
    public async Task The_page_tells_seasons_in_words_and_numbers()
    {
        string page = await PageText.Of<SeasonPage>(new
        {
            Site = Sample.Site,
            Days = (IReadOnlyList<SeasonDay>)[Day(2025, 7, 20, SpellKind.DryWindy, 3), Day(2025, 8, 10, SpellKind.DryWindy, 2), Day(2026, 1, 5, SpellKind.Wet, 1)],
            Sample.View().Page,
        });

        Assert.Contains("20 Jul – 10 Aug 2025", page, StringComparison.Ordinal);
        Assert.Contains("dry windy spell: 5", page, StringComparison.Ordinal);
        Assert.Contains("2026", page, StringComparison.Ordinal);
    }

    private static SeasonDay Day(int year, int month, int day, SpellKind? spell, int batches) => new(new(year, month, day), spell, batches);
}
