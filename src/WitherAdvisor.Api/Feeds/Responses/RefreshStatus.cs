namespace WitherAdvisor.Api.Feeds.Responses;

/// <summary>Result of asking a feed.</summary>
public enum RefreshStatus
{
    /// <summary>Weather, and it is kept.</summary>
    Taken,

    /// <summary>None.</summary>
    Refused,
}
