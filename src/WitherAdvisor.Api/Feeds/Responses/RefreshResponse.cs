namespace WitherAdvisor.Api.Feeds.Responses;

/// <summary>Result of fetching a site's weather now. That a feed gave none is an answer, not a failure of the service.</summary>
public sealed record RefreshResponse
{
    /// <summary>Whether there was weather.</summary>
    /// <example>taken</example>
    public required RefreshStatus Status { get; init; }

    /// <summary>The weather that was kept; null where there was none.</summary>
    public required TakenWeatherResponse? Taken { get; init; }

    /// <summary>Why there was none; null where there was.</summary>
    public required FeedRefusalResponse? Refusal { get; init; }

    /// <summary>What is kept of this feed now, and how old it is.</summary>
    public required FeedStateResponse Kept { get; init; }
}
