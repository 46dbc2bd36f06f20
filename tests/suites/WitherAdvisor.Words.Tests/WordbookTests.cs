namespace WitherAdvisor.Words.Tests;

public sealed class WordbookTests
{
    private static readonly Wordbook Book = Made("one_other", new()
    {
        ["plain"] = "All troughs",
        ["gap"] = "Loaded {time}, plucked {from} to {to}.",
        ["rows"] = "{count|{count} row|{count} rows} kept",
        ["bold"] = "With <strong>{set}</strong>.",
        ["feel.wet"] = "wet",
    });

    [Fact]
    public void Words_without_a_gap_are_said_as_they_stand() => Assert.Equal("All troughs", Book["plain"]);

    [Fact]
    public void Gaps_are_filled_by_name_in_whatever_order() => Assert.Equal(
        "Loaded 17:00, plucked 8 to 14.", Book.Say("gap", ("to", 14), ("from", "8"), ("time", "17:00")));

    [Fact]
    public void A_count_chooses_the_form() => Assert.Equal(
        ["0 rows kept", "1 row kept", "2 rows kept"],
        new[] { 0, 1, 2 }.Select(count => Book.Say("rows", ("count", count))));

    [Theory]
    [InlineData("other", "aaaaaa")]
    [InlineData("one_other", "babbbb")]
    [InlineData("zero_one_other", "aabbbb")]
    [InlineData("one_few_many", "cabccb")]
    public void Each_rule_of_counting_gives_its_forms_for_0_1_2_5_11_and_22(string rule, string forms)
    {
        Wordbook book = Made(rule, new() { ["thing"] = "{count|a|b|c}" });

        Assert.Equal(forms, string.Concat(new[] { 0, 1, 2, 5, 11, 22 }.Select(count => book.Say("thing", ("count", count)))));
    }

    [Fact]
    public void In_markup_what_fills_a_gap_is_made_harmless() =>
        Assert.Equal("With <strong>&lt;b&gt;</strong>.", Book.Html("bold", ("set", "<b>")));

    [Fact]
    public void A_missing_word_throws_and_names_language_and_key()
    {
        KeyNotFoundException missing = Assert.Throws<KeyNotFoundException>(() => Book["nowhere"]);

        Assert.Contains("xx", missing.Message, StringComparison.Ordinal);
        Assert.Contains("nowhere", missing.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_missing_value_throws_and_names_the_gap() => Assert.Contains(
        "from", Assert.Throws<KeyNotFoundException>(() => Book.Say("gap", ("time", ""), ("to", ""))).Message, StringComparison.Ordinal);

    [Fact]
    public void A_gap_that_is_not_closed_is_found_when_the_table_is_read() =>
        Assert.Throws<FormatException>(() => Made("other", new() { ["open"] = "Loaded {time" }));

    [Fact]
    public void A_rule_of_counting_that_nobody_knows_is_refused() =>
        Assert.Throws<ArgumentException>(() => Made("by_feel", []));

    [Fact]
    public void A_code_without_words_is_still_readable() =>
        Assert.Equal(["wet", "soaking wet"], [Book.OfCode("feel", "wet"), Book.OfCode("feel", "soaking_wet")]);

    [Theory]
    [InlineData("en", "en")]
    [InlineData("EN", "en")]
    [InlineData("en-GB", "en")]
    [InlineData("enm", null)]
    [InlineData("", null)]
    [InlineData(null, null)]
    public void A_language_is_found_by_its_tag_with_or_without_a_region(string? asked, string? found) =>
        Assert.Equal(found, Wordbooks.Embedded.Find(asked)?.Tag);

    private static Wordbook Made(string counting, Dictionary<string, string> texts)
    {
        texts["language.counting"] = counting;
        return new("xx", texts);
    }
}
