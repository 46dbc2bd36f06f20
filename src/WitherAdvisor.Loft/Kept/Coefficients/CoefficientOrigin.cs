namespace WitherAdvisor.Loft.Kept.Coefficients;

/// <summary>Where a coefficient set is from.</summary>
public enum CoefficientOrigin
{
    /// <summary>The library's own.</summary>
    Default,

    /// <summary>A person stated it.</summary>
    ByHand,

    /// <summary>Learned from the site's outcomes.</summary>
    Recalibration,
}
