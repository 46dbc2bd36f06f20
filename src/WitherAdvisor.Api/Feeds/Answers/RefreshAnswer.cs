namespace WitherAdvisor.Api.Feeds.Answers;

/// <summary>What came of fetching a site's weather now. That a feed gave none is an answer, not a failure of the service.</summary>
public sealed record RefreshAnswer
{
    /// <summary>Whether there was weather.</summary>
    /// <example>taken</example>
    public required RefreshStatus Status { get; init; }

    /// <summary>The weather that was kept; null where there was none.</summary>
    public required TakenWeatherAnswer? Taken { get; init; }

    /// <summary>Why there was none; null where there was.</summary>
    public required FeedRefusalAnswer? Refusal { get; init; }

    /// <summary>What is kept of this feed now, and how old it is.</summary>
    public required FeedStateAnswer Kept { get; init; }
}
