using WitherAdvisor.WeatherFeeds;

namespace WitherAdvisor.Words.Feeds;

/// <summary>What a reader of a feed's weather should know, in a sentence.</summary>
public static class FeedNoteWording
{
    public static string Sentence(FeedNote note) => note switch
    {
        FeedNote.Counted { Hours: 1 } one => $"{Happened(one)}: {(one is FeedNote.OutsideRange ? "1 hour" : "the hour of")} {one.First:yyyy-MM-dd'T'HH:mm'Z'}.",
        FeedNote.Counted many => $"{Happened(many)}: {many.Hours} hours, the first {many.First:yyyy-MM-dd'T'HH:mm'Z'}.",
        FeedNote.MissingColumn missing => $"The feed gave no {missing.Column}: it is unknown in all hours.",
        FeedNote.ConvertedUnits units => $"{units.Column} came in {units.Came} though {units.Asked} was asked, and was converted.",
        FeedNote.OldAnswer old =>
            $"The answer is dated {Time(old.Before)} before it came: an old one was kept on the way, or a clock is wrong. Hours after its date count as foretold.",
        FeedNote.ClockDiffers differs => $"The answer is dated {Time(differs.After)} after our clock: one of the clocks is wrong.",
        FeedNote.UnknownElevation =>
            "The feed does not say for which elevation its values are: they were taken as those of the site.",
        FeedNote.CorrectedElevation lift =>
            $"The feed's values are for {lift.FeedM:0} m, the site is at {lift.SiteM:0} m: temperatures were moved by {lift.MovedK:0.0} K (6.5 K/km), relative humidity kept, pressure scaled as in the standard atmosphere.",
        FeedNote.FarCell far => $"The weather is of a place {far.AwayKm:0} km from the site.",
        FeedNote.UnsortedHours => "The feed's hours were not in the order of time; they were put in order.",
        FeedNote.PastOnly past => $"The feed gave no hour after {past.After:yyyy-MM-dd'T'HH:mm'Z'}: nothing is foretold.",
        FeedNote.ShiftedDays shifted =>
            $"The feed's days are {shifted.Days:+0;-0} of those asked for: its clock or ours is off, or an old answer was kept on the way.",
        FeedNote.SaidThen then => then.Sentence,
        _ => throw new ArgumentOutOfRangeException(nameof(note), note, "No words for this note."),
    };

    /// <summary>What befell hours, without a full stop.</summary>
    private static string Happened(FeedNote.Counted note) => note switch
    {
        FeedNote.UnknownHours unknown => $"{unknown.Column} is unknown",
        FeedNote.ImpossibleValues impossible => $"{impossible.Column} held what no weather can have and was taken as unknown",
        FeedNote.RepeatedHours => "An hour came more than once",
        FeedNote.ContradictingHours contradicting =>
            $"{contradicting.Column} came with different values for one hour and was taken as unknown",
        FeedNote.ClampedDewPoint => "The dew point stood a little over the dry bulb and was set to it",
        FeedNote.RefusedDewPoint refused => $"The dew point stood over {refused.OverK} K above the dry bulb and was taken as unknown",
        FeedNote.ClampedHumidity => "The relative humidity stood a little over 100 % and was set to it",
        FeedNote.OutsideHours => "Hours far outside those asked for were left out",
        FeedNote.MissingHours => "Nothing is known of hours that were asked for",
        FeedNote.OutsideRange outside =>
            $"{outside.Field} outside {outside.Least} to {outside.Most}{(outside.Unit is null ? "" : " " + outside.Unit)} was not kept",
        _ => throw new ArgumentOutOfRangeException(nameof(note), note, "No words for this note."),
    };

    private static string Time(TimeSpan time) => time < TimeSpan.FromHours(2) ? $"{time.TotalMinutes:0} min" : $"{time.TotalHours:0} h";
}
