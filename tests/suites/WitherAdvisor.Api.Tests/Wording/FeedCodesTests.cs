using WitherAdvisor.Loft.Kept;
using WitherAdvisor.Loft.Kept.Weather;
using WitherAdvisor.WeatherFeeds;
using WitherAdvisor.Words;
using WitherAdvisor.Words.Feeds;
using Xunit;

namespace WitherAdvisor.Api.Tests.Wording;

public sealed class FeedCodesTests
{
    private static readonly DateTimeOffset First = new(2026, 6, 4, 20, 0, 0, TimeSpan.Zero);

    [Fact]
    public void Hours_are_counted_and_the_first_is_named()
    {
        Assert.Equal("precipitation is unknown: 4 hours, the first 2026-06-04T20:00Z.", FeedNoteWording.Sentence(Wordbook.English, new FeedNote.UnknownHours("precipitation", 4, First)));
        Assert.Equal("precipitation is unknown: the hour of 2026-06-04T20:00Z.", FeedNoteWording.Sentence(Wordbook.English, new FeedNote.UnknownHours("precipitation", 1, First)));
        Assert.Equal("rain_mm outside 0 to 300 mm was not kept: 1 hour 2026-06-04T20:00Z.", FeedNoteWording.Sentence(Wordbook.English, new FeedNote.OutsideRange("rain_mm", 0, 300, "mm", 1, First)));
        Assert.Equal("rain_mm outside 0 to 300 mm was not kept: 2 hours, the first 2026-06-04T20:00Z.", FeedNoteWording.Sentence(Wordbook.English, new FeedNote.OutsideRange("rain_mm", 0, 300, "mm", 2, First)));
    }

    [Theory]
    [InlineData(0.5, "30 min")]
    [InlineData(26, "26 h")]
    public void A_difference_of_clocks_is_told_in_minutes_or_hours(double hours, string words) =>
        Assert.Contains(words, FeedNoteWording.Sentence(Wordbook.English, new FeedNote.OldAnswer(TimeSpan.FromHours(hours))), StringComparison.Ordinal);

    [Fact]
    public void What_the_feed_said_and_what_went_wrong_before_is_told() => Assert.Equal(
        [
            "The feed rejected the request: Given 94.", "The feed rejected the request: no reason given", "The feed rejected the request",
            "There was no complete answer within 25 s. Before that: The feed failed (status 503)",
            "The feed redirects elsewhere (another path). That is not followed, because only the operator chooses addresses.",
        ],
        new FeedFault[]
        {
            new FeedFault.QuestionRefused("Given 94."), new FeedFault.QuestionRefused(""), new FeedFault.QuestionRefused(null),
            new FeedFault.TookTooLong(25, new FeedFault.FeedFailed(503, null)), new FeedFault.PointsElsewhere(Elsewhere.Path, null),
        }.Select(fault => FeedFaultWording.Sentence(Wordbook.English, fault)));

    [Fact]
    public void Every_fault_and_every_note_comes_back_as_it_was_kept()
    {
        Assert.All(Examples<FeedFault>(), fault => Assert.Equal(fault, FeedCodesJson.ReadFault(FeedCodesJson.Write(fault))));
        FeedNote[] notes = Examples<FeedNote>();
        Assert.Equal(notes, FeedCodesJson.ReadNotes(FeedCodesJson.Write(notes)));
        Assert.All(notes, note => Assert.Equal(ClosedFamilyJson.Code(note.GetType()), note.Code));
    }

    [Fact]
    public void A_name_that_was_kept_once_is_for_ever() => Assert.Equal(
        """
        clamped_dew_point(hours,first) clamped_humidity(hours,first) clock_differs(after) contradicting_hours(column,hours,first)
        converted_units(column,came,asked) corrected_elevation(feed_m,site_m,moved_k) far_cell(away_km) impossible_values(column,hours,first)
        missing_column(column) missing_hours(hours,first) old_answer(before) outside_hours(hours,first)
        outside_range(field,least,most,unit,hours,first) past_only(after) refused_dew_point(over_k,hours,first) repeated_hours(hours,first)
        said_then(sentence) shifted_days(days) unknown_elevation() unknown_hours(column,hours,first) unsorted_hours()
        """.ReplaceLineEndings(" "),
        string.Join(' ', ClosedFamilyJson.Cases(typeof(FeedNote)).Select(Shape).Order(StringComparer.Ordinal)));

    private static string Shape(Type ofCase) =>
        $"{ClosedFamilyJson.Code(ofCase)}({string.Join(',', ofCase.GetConstructors().Single().GetParameters().Select(one => System.Text.Json.JsonNamingPolicy.SnakeCaseLower.ConvertName(one.Name!)))})";

    private static T[] Examples<T>() => [.. ClosedFamilyJson.Cases(typeof(T)).Select(one => (T)Example.Of(one))];
}
