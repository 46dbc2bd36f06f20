using WitherAdvisor.Review;

namespace WitherAdvisor.Api.Weather.Review;

/// <summary>
/// How values came to be known: read (observed or analysed), filled (drawn between readings, spread from a gauge's total,
/// partly guessed), forecast, unknown.
/// </summary>
public sealed record HourStandingResponse
{
    /// <summary>Of the dry bulb.</summary>
    /// <example>read</example>
    public required ValueStanding DryBulb { get; init; }

    /// <summary>Of dew point, wet bulb and hygrometric difference.</summary>
    /// <example>read</example>
    public required ValueStanding Humidity { get; init; }

    /// <summary>Of rain.</summary>
    /// <example>filled</example>
    public required ValueStanding Rain { get; init; }

    /// <summary>Of wind.</summary>
    /// <example>read</example>
    public required ValueStanding Wind { get; init; }

    /// <summary>Of the water on the leaf: the least sure of the 24 hours before it.</summary>
    /// <example>filled</example>
    public required ValueStanding SurfaceWater { get; init; }
}
