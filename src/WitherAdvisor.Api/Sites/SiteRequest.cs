using NodaTime;
using WitherAdvisor.Fields;

namespace WitherAdvisor.Api.Sites;

/// <summary>Where the withering loft stands and how it withers.</summary>
public record SiteRequest : ICrossChecked
{
    /// <summary>For people.</summary>
    /// <example>Example Hill factory (invented)</example>
    [Text(80)]
    public required string Name { get; init; }

    /// <summary>Metres above sea level.</summary>
    /// <example>1500</example>
    [Measured(-430, 5000)]
    public required double ElevationM { get; init; }

    /// <summary>Degrees north.</summary>
    /// <example>6.95</example>
    [Measured(-66, 66)]
    public required double LatitudeDeg { get; init; }

    /// <summary>Degrees east.</summary>
    /// <example>80.75</example>
    [Measured(-180, 180)]
    public required double LongitudeDeg { get; init; }

    /// <summary>IANA time zone. Times of answers carry its offset.</summary>
    /// <example>Asia/Colombo</example>
    [Text(64)]
    public required string TimeZone { get; init; }

    /// <summary>Measured air pressure at the loft, not reduced to sea level; it wins over elevation. Unknown when left out.</summary>
    /// <example>845.6</example>
    [Measured(500, 1100)]
    public double? StationPressureHpa { get; init; }

    /// <summary>Dry bulb of the hot air before it is mixed in; 52.8 when left out (common practice, no published source).</summary>
    /// <example>52.8</example>
    [Measured(40, 120)]
    public double? HotAirC { get; init; }

    /// <summary>Most heat of the whole loft, 0 where there is none. Left out, the plan takes it for enough.</summary>
    /// <example>900</example>
    [Measured(0, 50000)]
    public double? LoftHeaterKw { get; init; }

    /// <summary>What the site steers by and its limits; the short style when left out.</summary>
    public StyleRequest? Style { get; init; }

    public IEnumerable<FieldError> CrossCheck()
    {
        if (DateTimeZoneProviders.Tzdb.GetZoneOrNull(TimeZone) is null)
        {
            yield return FieldError.Of("time_zone", $"\"{TimeZone}\"", "a zone of the IANA time zone database, such as Asia/Colombo");
        }
    }
}
