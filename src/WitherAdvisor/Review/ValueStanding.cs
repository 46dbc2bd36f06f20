namespace WitherAdvisor.Review;

/// <summary>How a value came to be known, the surest first: what is made of several stands as the least sure of them.</summary>
public enum ValueStanding
{
    /// <summary>Observed, or analysed by a feed.</summary>
    Observed,

    /// <summary>Drawn between readings, spread from a gauge's total, or worked out where a part was guessed.</summary>
    Filled,

    /// <summary>Forecast, and nobody observed it.</summary>
    Forecast,

    /// <summary>Not known.</summary>
    Unknown,
}
