using WitherAdvisor.Fields;
using WitherAdvisor.Review;

namespace WitherAdvisor.Api.Weather.Review;

/// <summary>Which weather to review.</summary>
public sealed record ReviewQuery
{
    internal const int UsualDays = ReviewSpan.UsualDays;

    /// <summary>Whole days before the day of the review; 14 when left out.</summary>
    /// <example>14</example>
    [Measured(1, 60)]
    public int? Days { get; init; }

    /// <summary>The moment to review it at; now when left out.</summary>
    /// <example>2026-03-01T13:00:00+05:30</example>
    public DateTimeOffset? At { get; init; }
}
