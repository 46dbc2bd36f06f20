namespace WitherAdvisor.WeatherFeeds;

/// <summary>
/// What exactly a feed or the way to it did, when it gave no series: one case for each, with what belongs to it. What a feed
/// itself said is cut short and cleaned, and holds no key. The names of cases and members are kept in databases.
/// </summary>
public abstract record FeedFault
{
    private FeedFault()
    {
    }

    /// <summary>The feed's host name is not known.</summary>
    public sealed record HostUnknown : FeedFault;

    /// <summary>Certificate or TLS was not accepted.</summary>
    public sealed record NotSecure : FeedFault;

    /// <summary>The host could not be reached or refused the connection.</summary>
    public sealed record NotReached : FeedFault;

    /// <summary>The answer has more headers than a feed needs.</summary>
    public sealed record TooManyHeaders : FeedFault;

    /// <summary>The connection broke before the answer was whole.</summary>
    public sealed record BrokeOff : FeedFault;

    /// <summary>The compressed answer is damaged.</summary>
    public sealed record DamagedCompression : FeedFault;

    /// <summary>No archive of past days is configured.</summary>
    public sealed record NoArchive : FeedFault;

    /// <summary>The answer is over the limit.</summary>
    public sealed record OverLimit(int MostBytes) : FeedFault;

    /// <summary>The feed rejected the request.</summary>
    /// <param name="Said">By the feed; empty where it gave no reason, null where it said nothing.</param>
    public sealed record QuestionRefused(string? Said) : FeedFault;

    /// <summary>The feed wants another key.</summary>
    public sealed record KeyRefused(int Status, string? Said) : FeedFault;

    /// <summary>The feed has no such page.</summary>
    public sealed record NoSuchPage(string? Said) : FeedFault;

    /// <summary>The feed's request limit is used up.</summary>
    public sealed record LimitUsedUp(string? Said) : FeedFault;

    /// <summary>The feed failed.</summary>
    public sealed record FeedFailed(int Status, string? Said) : FeedFault;

    /// <summary>The feed points to another address, which is not followed.</summary>
    /// <param name="Where">What kind of address.</param>
    /// <param name="Host">Of it, where it is another host's.</param>
    public sealed record PointsElsewhere(Elsewhere Where, string? Host) : FeedFault;

    /// <summary>The feed answered with a status that means nothing here.</summary>
    public sealed record OtherStatus(int Status, string? Said) : FeedFault;

    /// <summary>Several places came where one was asked.</summary>
    public sealed record ListOfPlaces : FeedFault;

    /// <summary>A label of time is not written as times are.</summary>
    /// <param name="Place">From 1.</param>
    public sealed record TimeUnreadable(int Place) : FeedFault;

    /// <summary>A label of time is not a whole hour of GMT.</summary>
    /// <param name="Place">From 1.</param>
    public sealed record TimeNotWhole(int Place) : FeedFault;

    /// <summary>A column is no list.</summary>
    public sealed record NotAList(string Column) : FeedFault;

    /// <summary>A column has more or fewer values than there are hours.</summary>
    public sealed record OtherLength(string Column, int Values, int Hours) : FeedFault;

    /// <summary>No unit is said of a column.</summary>
    public sealed record UnitUnsaid(string Column) : FeedFault;

    /// <summary>A column is in a unit that is not known.</summary>
    public sealed record UnitUnknown(string Column, string Asked) : FeedFault;

    /// <summary>A value is neither a number nor null.</summary>
    /// <param name="Place">From 1.</param>
    public sealed record NotANumber(string Column, int Place) : FeedFault;

    /// <summary>The answer has no hourly values or no units for them.</summary>
    public sealed record NoHourlyValues : FeedFault;

    /// <summary>The hourly values have no times.</summary>
    public sealed record NoTimes : FeedFault;

    /// <summary>Times are not written in the form that was asked.</summary>
    public sealed record OtherTimes(string Asked) : FeedFault;

    /// <summary>A column is absent without which leaf cannot be judged.</summary>
    public sealed record ColumnLacking(string Column) : FeedFault;

    /// <summary>Dew point and relative humidity are both absent.</summary>
    public sealed record HumidityLacking : FeedFault;

    /// <summary>The answer is empty.</summary>
    public sealed record EmptyAnswer : FeedFault;

    /// <summary>A web page came.</summary>
    public sealed record WebPage : FeedFault;

    /// <summary>Text came that is not JSON.</summary>
    public sealed record OtherText : FeedFault;

    /// <summary>JSON came that breaks off or breaks its rules.</summary>
    public sealed record BrokenJson(int MostLevels, long? Line, long? Byte, int Length) : FeedFault;

    /// <summary>The feed does not say which offset its hours have.</summary>
    public sealed record OffsetUnsaid : FeedFault;

    /// <summary>The feed's hours are not GMT.</summary>
    public sealed record OffGmt(double Seconds) : FeedFault;

    /// <summary>The feed names another zone than GMT, or none.</summary>
    public sealed record OtherZone : FeedFault;

    /// <summary>No whole answer came in time.</summary>
    /// <param name="Before">Of an earlier try; null where there was none.</param>
    public sealed record TookTooLong(double WithinSeconds, FeedFault? Before) : FeedFault;

    /// <summary>The feed failed again and again and is not asked for a while.</summary>
    /// <param name="Before">What it did last; null where that is not known.</param>
    public sealed record LeftInPeace(FeedFault? Before) : FeedFault;

    /// <summary>Too many fetches of the feed wait already.</summary>
    public sealed record TooManyWait : FeedFault;

    /// <summary>The values are for an elevation that is not the site's.</summary>
    public sealed record OtherElevation(double FeedM, double SiteM) : FeedFault;

    /// <summary>The feed does not say what place its weather is for.</summary>
    public sealed record PlaceUnsaid : FeedFault;

    /// <summary>The weather is of a place too far away.</summary>
    public sealed record OtherPlace(double AwayKm) : FeedFault;

    /// <summary>None of the hours asked for came with a temperature.</summary>
    public sealed record NoUsableHours(DateTimeOffset First, DateTimeOffset Last) : FeedFault;

    /// <summary>The values are not hourly.</summary>
    public sealed record NotHourly : FeedFault;

    /// <summary>The site was moved while its feed was asked.</summary>
    public sealed record SiteMoved : FeedFault;

    /// <summary>Kept by a version that kept sentences.</summary>
    public sealed record SaidThen(string Sentence) : FeedFault;
}
