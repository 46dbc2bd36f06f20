using WitherAdvisor.WeatherFeeds;

namespace WitherAdvisor.Words.Feeds;

/// <summary>What is wrong with a feed's answer that came, in a sentence.</summary>
public static class FeedShapeWording
{
    public static string Sentence(Wordbook words, FeedFault fault) => fault switch
    {
        FeedFault.ListOfPlaces => words["feed_fault.list_of_places"],
        FeedFault.TimeUnreadable time => words.Say("feed_fault.time_unreadable", ("place", time.Place)),
        FeedFault.TimeNotWhole time => words.Say("feed_fault.time_not_whole", ("place", time.Place)),
        FeedFault.NotAList not => words.Say("feed_fault.not_a_list", ("column", not.Column)),
        FeedFault.OtherLength other =>
            words.Say("feed_fault.other_length", ("values", other.Values), ("column", other.Column), ("hours", other.Hours)),
        FeedFault.UnitUnsaid unsaid => words.Say("feed_fault.unit_unsaid", ("column", unsaid.Column)),
        FeedFault.UnitUnknown unknown => words.Say("feed_fault.unit_unknown", ("column", unknown.Column), ("asked", unknown.Asked)),
        FeedFault.NotANumber not => words.Say("feed_fault.not_a_number", ("place", not.Place), ("column", not.Column)),
        FeedFault.NoHourlyValues => words["feed_fault.no_hourly_values"],
        FeedFault.NoTimes => words["feed_fault.no_times"],
        FeedFault.OtherTimes times => words.Say("feed_fault.other_times", ("asked", times.Asked)),
        FeedFault.ColumnLacking lacking => words.Say("feed_fault.column_lacking", ("column", lacking.Column)),
        FeedFault.HumidityLacking => words["feed_fault.humidity_lacking"],
        FeedFault.EmptyAnswer => words["feed_fault.empty_answer"],
        FeedFault.WebPage => words["feed_fault.web_page"],
        FeedFault.OtherText => words["feed_fault.other_text"],
        FeedFault.BrokenJson broken => words.Say(
            "feed_fault.broken_json",
            ("levels", broken.MostLevels), ("line", $"{broken.Line}"), ("byte", $"{broken.Byte}"), ("length", broken.Length)),
        FeedFault.OffsetUnsaid => words["feed_fault.offset_unsaid"],
        FeedFault.OffGmt off => words.Say("feed_fault.off_gmt", ("seconds", $"{off.Seconds:0.#}")),
        FeedFault.OtherZone => words["feed_fault.other_zone"],
        FeedFault.OtherElevation other => words.Say("feed_fault.other_elevation", ("feed", $"{other.FeedM:0}"), ("site", $"{other.SiteM:0}")),
        FeedFault.PlaceUnsaid => words["feed_fault.place_unsaid"],
        FeedFault.OtherPlace other => words.Say("feed_fault.other_place", ("away", $"{other.AwayKm:0}")),
        FeedFault.NoUsableHours none =>
            words.Say("feed_fault.no_usable_hours", ("first", FeedHour.Text(none.First)), ("last", FeedHour.Text(none.Last))),
        FeedFault.NotHourly => words["feed_fault.not_hourly"],
        _ => throw new ArgumentOutOfRangeException(nameof(fault), fault, "No words for this fault."),
    };
}
