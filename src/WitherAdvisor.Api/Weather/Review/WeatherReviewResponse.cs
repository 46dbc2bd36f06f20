using WitherAdvisor.Api.Advice.Responses;

namespace WitherAdvisor.Api.Weather.Review;

/// <summary>The weather of the last days and the coming night as the model sees it. Null is unknown, never 0.</summary>
public sealed record WeatherReviewResponse
{
    /// <summary>The moment it was reviewed at.</summary>
    /// <example>2026-03-01T13:00:00+05:30</example>
    public required DateTimeOffset At { get; init; }

    /// <summary>How old it is then.</summary>
    public required WeatherAgeResponse Age { get; init; }

    /// <summary>The readings that would help most, at most two; none where all is known.</summary>
    public required IReadOnlyList<WantedReadingResponse> Wanted { get; init; }

    /// <summary>The spell of leaf plucked at this moment, as an advice would say.</summary>
    public required SpellResponse SpellNow { get; init; }

    /// <summary>Water on and in leaf plucked at this moment, and what was assumed for it.</summary>
    public required LeafResponse LeafNow { get; init; }

    /// <summary>Where spells begin and end.</summary>
    public required SpellThresholdsResponse Thresholds { get; init; }

    /// <summary>By time. Days are 24 hours from the site's midnight, on whole hours of UTC.</summary>
    public required IReadOnlyList<ReviewDayResponse> Days { get; init; }

    /// <summary>By time, to 18 hours ahead.</summary>
    public required IReadOnlyList<ReviewHourResponse> Hours { get; init; }

    /// <summary>Gaps: hours gone by without a reading, hours ahead without a forecast. By quantity and time.</summary>
    public required IReadOnlyList<WeatherHoleResponse> Holes { get; init; }

    /// <summary>The feed that the site's weather is fetched from; null where none is.</summary>
    public required ReviewedFeedResponse? Feed { get; init; }
}
