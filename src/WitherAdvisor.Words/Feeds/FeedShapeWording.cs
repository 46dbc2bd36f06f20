using WitherAdvisor.WeatherFeeds;

namespace WitherAdvisor.Words.Feeds;

/// <summary>What is wrong with a feed's answer that came, in a sentence.</summary>
public static class FeedShapeWording
{
    public static string Sentence(FeedFault fault) => fault switch
    {
        FeedFault.ListOfPlaces => "The feed answered with a list of places; one place was asked.",
        FeedFault.TimeUnreadable time => $"Time {time.Place} of the feed's answer is not written as yyyy-mm-ddThh:mm.",
        FeedFault.TimeNotWhole time =>
            $"Time {time.Place} of the feed's answer is not a whole hour of GMT: labels of a half-hour zone, or no hourly values.",
        FeedFault.NotAList not => $"{not.Column} is not a list in the feed's answer.",
        FeedFault.OtherLength other =>
            $"The feed gave {other.Values} values of {other.Column} for {other.Hours} hours: which belongs to which is unknown.",
        FeedFault.UnitUnsaid unsaid => $"The feed does not say in which unit {unsaid.Column} is.",
        FeedFault.UnitUnknown unknown => $"The feed gives {unknown.Column} in a unit that is not known; {unknown.Asked} was asked.",
        FeedFault.NotANumber not => $"Value {not.Place} of {not.Column} is neither a number nor null.",
        FeedFault.NoHourlyValues => "The feed's answer has no hourly values or no units for them.",
        FeedFault.NoTimes => "The feed's hourly values have no times.",
        FeedFault.OtherTimes times => $"The feed does not write times as {times.Asked}, which was asked.",
        FeedFault.ColumnLacking lacking => $"The feed's answer has no {lacking.Column}, without which leaf cannot be judged.",
        FeedFault.HumidityLacking => "The feed's answer has no humidity, without which leaf cannot be judged.",
        FeedFault.EmptyAnswer => "The feed's answer is empty.",
        FeedFault.WebPage =>
            "The feed answered with a web page, not with weather: a sign-in page of the network, or a wrong address.",
        FeedFault.OtherText => "The feed answered with text that is not JSON.",
        FeedFault.BrokenJson broken =>
            $"The feed's JSON breaks off, repeats a name, is over {broken.MostLevels} levels deep or holds what JSON cannot, at line {broken.Line}, byte {broken.Byte} of {broken.Length} in all.",
        FeedFault.OffsetUnsaid => "The feed does not say which offset its hours have (utc_offset_seconds).",
        FeedFault.OffGmt off => $"Hours in GMT were asked; the feed's are {off.Seconds:0.#} s off it.",
        FeedFault.OtherZone => "Hours in GMT were asked; the feed names another zone, or none.",
        FeedFault.OtherElevation other => $"The feed's values are for {other.FeedM:0} m, the site is at {other.SiteM:0} m.",
        FeedFault.PlaceUnsaid => "The feed does not say of which place its weather is.",
        FeedFault.OtherPlace other => $"The feed's weather is of a place {other.AwayKm:0} km from the site.",
        FeedFault.NoUsableHours none =>
            $"None of the hours from {none.First:yyyy-MM-dd'T'HH:mm'Z'} to {none.Last:yyyy-MM-dd'T'HH:mm'Z'} came with a temperature.",
        FeedFault.NotHourly => "The feed's values are not hourly.",
        _ => throw new ArgumentOutOfRangeException(nameof(fault), fault, "No words for this fault."),
    };
}
