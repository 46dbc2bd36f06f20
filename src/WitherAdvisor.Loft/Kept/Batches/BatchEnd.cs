namespace WitherAdvisor.Loft.Kept.Batches;

/// <summary>How a batch ended.</summary>
public enum BatchEnd
{
    /// <summary>Its leaf was withered and taken off its trough.</summary>
    Unloaded,

    /// <summary>Its leaf was not withered here after all.</summary>
    Cancelled,

    /// <summary>Its leaf was put together with that of another batch, which counts from then on.</summary>
    Mixed,
}
