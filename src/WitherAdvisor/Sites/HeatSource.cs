namespace WitherAdvisor.Sites;

/// <summary>How much heat a loft has, when, and what it costs.</summary>
public sealed record HeatSource
{
    /// <summary>Most heat of the whole loft, kW; null where it is not known to be short, 0 where there is none.</summary>
    public double? LoftKW { get; init; }

    /// <summary>When there is heat; null for always. Where the hot air comes from a drier, while the drier is fired.</summary>
    public IReadOnlyList<HeatSpan>? Spans { get; init; }

    /// <summary>Price of a kWh of heat as it reaches the trough, in the site's currency; null where nobody said.</summary>
    public double? PricePerKWh { get; init; }

    /// <summary>Price of a kWh of power for the fan, in the site's currency; null where nobody said.</summary>
    public double? PowerPricePerKWh { get; init; }
}
