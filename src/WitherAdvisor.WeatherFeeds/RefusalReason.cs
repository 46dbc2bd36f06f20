namespace WitherAdvisor.WeatherFeeds;

/// <summary>Why a feed gave no series.</summary>
public enum RefusalReason
{
    /// <summary>No such host, refused, or no agreement on TLS.</summary>
    NoConnection,

    /// <summary>The connection broke before the answer was whole.</summary>
    ConnectionLost,

    /// <summary>No whole answer within the time limit.</summary>
    TimedOut,

    /// <summary>The feed says that it failed or is overloaded (5xx).</summary>
    ServerFault,

    /// <summary>The feed's request limit is used up (429).</summary>
    TooManyRequests,

    /// <summary>The feed understood and refused what was asked (400), or says so inside an answer.</summary>
    BadRequest,

    /// <summary>The feed wants another key (401, 403).</summary>
    KeyRefused,

    /// <summary>No such page (404): mostly a wrong base address.</summary>
    NotFound,

    /// <summary>The feed points elsewhere; only the operator chooses addresses, so that is not followed.</summary>
    Redirected,

    /// <summary>Any other status.</summary>
    UnexpectedStatus,

    /// <summary>An answer without a body.</summary>
    EmptyBody,

    /// <summary>A page or text where JSON was asked.</summary>
    NotJson,

    /// <summary>JSON that breaks off, is nested too deep, or holds what JSON cannot.</summary>
    BrokenJson,

    /// <summary>A body over the limit, after decompression.</summary>
    TooLarge,

    /// <summary>JSON of another shape than agreed.</summary>
    WrongShape,

    /// <summary>A unit that is not known, or none.</summary>
    WrongUnits,

    /// <summary>Hours labelled in another zone than GMT, which was asked.</summary>
    WrongZone,

    /// <summary>Weather of a place too far away or too much higher or lower.</summary>
    WrongPlace,

    /// <summary>None of the hours asked for, or none with a temperature.</summary>
    NoUsableHours,

    /// <summary>The feed keeps failing and is left alone for a while.</summary>
    BreakerOpen,

    /// <summary>Too many fetches from this feed are waiting already.</summary>
    TooBusy,

    /// <summary>Days of the archive were asked of a feed that has none.</summary>
    NoArchive,
}
