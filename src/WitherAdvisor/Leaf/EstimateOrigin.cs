namespace WitherAdvisor.Leaf;

/// <summary>Where a value is from, best first: a better one always wins.</summary>
public enum EstimateOrigin
{
    /// <summary>Somebody weighed or dried a sample.</summary>
    Measured,

    /// <summary>Somebody judged it by hand.</summary>
    ByFeel,

    /// <summary>Worked out from the weather.</summary>
    FromWeather,

    /// <summary>A starting value: nothing was known.</summary>
    Assumed,
}
