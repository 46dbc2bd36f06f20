using System.Text.RegularExpressions;

namespace WitherAdvisor.Words.Tests;

/// <summary>Every language says all that English says, with the same gaps.</summary>
public sealed partial class LanguagesTests
{
    public static TheoryData<string> Tags => [.. Wordbooks.Embedded.All.Select(book => book.Tag)];

    [Theory]
    [MemberData(nameof(Tags))]
    public void Every_code_that_can_be_spoken_has_words(string tag) =>
        Assert.All(SpokenCodes.Keys, key => Assert.False(string.IsNullOrWhiteSpace(Book(tag).Texts.GetValueOrDefault(key)), key));

    [Theory]
    [MemberData(nameof(Tags))]
    public void Members_of_one_enumeration_are_told_apart(string tag) => Assert.All(
        SpokenCodes.Keys.GroupBy(key => (key[..key.IndexOf('.', StringComparison.Ordinal)], key.Count(letter => letter == '.') == 1 ? "" : key[key.LastIndexOf('.')..])),
        group => Assert.Equal(group.Count(), group.Select(key => Book(tag).Texts[key]).Distinct(StringComparer.Ordinal).Count()));

    [Theory]
    [MemberData(nameof(Tags))]
    public void A_language_has_the_keys_of_English_and_no_others(string tag)
    {
        Assert.Empty(Wordbook.English.Texts.Keys.Except(Book(tag).Texts.Keys));
        Assert.Empty(Book(tag).Texts.Keys.Except(Wordbook.English.Texts.Keys));
    }

    [Theory]
    [MemberData(nameof(Tags))]
    public void A_text_has_the_gaps_of_English(string tag) => Assert.All(Wordbook.English.Texts.Keys, key =>
        Assert.Equal(Wordbook.English.Find(key).Gaps.Order(), Book(tag).Find(key).Gaps.Order()));

    [Theory]
    [MemberData(nameof(Tags))]
    public void A_text_has_the_markup_of_English(string tag) => Assert.All(Wordbook.English.Texts, text =>
        Assert.Equal(Tag().Matches(text.Value).Select(found => found.Value).Order(), Tag().Matches(Book(tag).Texts[text.Key]).Select(found => found.Value).Order()));

    [Theory]
    [MemberData(nameof(Tags))]
    public void A_counted_gap_has_as_many_forms_as_the_language_counts_by(string tag)
    {
        int forms = new Counting(Book(tag)["language.counting"]).Forms;

        Assert.All(Book(tag).Texts.Keys, key => Assert.All(Book(tag).Find(key).FormCounts, count => Assert.Equal(forms, count)));
    }

    [Theory]
    [MemberData(nameof(Tags))]
    public void A_text_neither_begins_nor_ends_with_a_blank(string tag) =>
        Assert.All(Book(tag).Texts, text => Assert.Equal(text.Value.Trim(), text.Value));

    [Fact]
    public void English_is_among_the_languages() => Assert.Contains(Wordbook.English, Wordbooks.Embedded.All);

    [Fact]
    public void A_language_that_lacks_a_word_a_gap_or_a_form_is_found_out()
    {
        Wordbook lame = new("xx", new Dictionary<string, string>(StringComparer.Ordinal)
        {
            ["language.counting"] = "one_other",
            ["ago.hours"] = "vor Stunden",
            ["hole.others"] = "Und {count|noch eine|noch {count}|noch viele}.",
        });

        Assert.DoesNotContain("ago.days", lame.Texts.Keys);
        Assert.NotEqual(Wordbook.English.Find("ago.hours").Gaps, lame.Find("ago.hours").Gaps);
        Assert.Equal([3], lame.Find("hole.others").FormCounts);
    }

    private static Wordbook Book(string tag) => Wordbooks.Embedded.Find(tag)!;

    [GeneratedRegex("<[^>]*>", RegexOptions.NonBacktracking)]
    private static partial Regex Tag();
}
