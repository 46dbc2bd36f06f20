using WitherAdvisor.WeatherFeeds;

namespace WitherAdvisor.Words.Feeds;

/// <summary>What a reader of a feed's weather should know, in a sentence.</summary>
public static class FeedNoteWording
{
    public static string Sentence(Wordbook words, FeedNote note) => note switch
    {
        FeedNote.Counted { Hours: 1 } one => words.Say(
            one is FeedNote.OutsideRange ? "feed_note.one_hour_left_out" : "feed_note.one_hour",
            ("happened", Happened(words, one)), ("first", FeedHour.Text(one.First))),
        FeedNote.Counted many => words.Say(
            "feed_note.many_hours", ("happened", Happened(words, many)), ("hours", many.Hours), ("first", FeedHour.Text(many.First))),
        FeedNote.MissingColumn missing => words.Say("feed_note.missing_column", ("column", missing.Column)),
        FeedNote.ConvertedUnits units =>
            words.Say("feed_note.converted_units", ("column", units.Column), ("came", units.Came), ("asked", units.Asked)),
        FeedNote.OldAnswer old => words.Say("feed_note.old_answer", ("time", Time(old.Before))),
        FeedNote.ClockDiffers differs => words.Say("feed_note.clock_differs", ("time", Time(differs.After))),
        FeedNote.UnknownElevation => words["feed_note.unknown_elevation"],
        FeedNote.CorrectedElevation lift => words.Say(
            "feed_note.corrected_elevation",
            ("feed", $"{lift.FeedM:0}"), ("site", $"{lift.SiteM:0}"), ("moved", $"{lift.MovedK:0.0}")),
        FeedNote.FarCell far => words.Say("feed_note.far_cell", ("away", $"{far.AwayKm:0}")),
        FeedNote.UnsortedHours => words["feed_note.unsorted_hours"],
        FeedNote.PastOnly past => words.Say("feed_note.past_only", ("after", FeedHour.Text(past.After))),
        FeedNote.ShiftedDays shifted => words.Say("feed_note.shifted_days", ("days", $"{shifted.Days:+0;-0}")),
        FeedNote.SaidThen then => then.Sentence,
        _ => throw new ArgumentOutOfRangeException(nameof(note), note, "No words for this note."),
    };

    /// <summary>What befell hours, without a full stop.</summary>
    private static string Happened(Wordbook words, FeedNote.Counted note) => note switch
    {
        FeedNote.UnknownHours unknown => words.Say("feed_note.unknown_hours", ("column", unknown.Column)),
        FeedNote.ImpossibleValues impossible => words.Say("feed_note.impossible_values", ("column", impossible.Column)),
        FeedNote.RepeatedHours => words["feed_note.repeated_hours"],
        FeedNote.ContradictingHours contradicting => words.Say("feed_note.contradicting_hours", ("column", contradicting.Column)),
        FeedNote.ClampedDewPoint => words["feed_note.clamped_dew_point"],
        FeedNote.RefusedDewPoint refused => words.Say("feed_note.refused_dew_point", ("over", refused.OverK)),
        FeedNote.ClampedHumidity => words["feed_note.clamped_humidity"],
        FeedNote.OutsideHours => words["feed_note.outside_hours"],
        FeedNote.MissingHours => words["feed_note.missing_hours"],
        FeedNote.OutsideRange outside => words.Say(
            "feed_note.outside_range",
            ("field", outside.Field), ("least", outside.Least), ("most", outside.Unit is null ? outside.Most : $"{outside.Most} {outside.Unit}")),
        _ => throw new ArgumentOutOfRangeException(nameof(note), note, "No words for this note."),
    };

    private static string Time(TimeSpan time) => time < TimeSpan.FromHours(2) ? $"{time.TotalMinutes:0} min" : $"{time.TotalHours:0} h";
}
