namespace WitherAdvisor.Loft.Kept.Coefficients;

/// <summary>How it stands with a recalibration.</summary>
public enum RecalibrationStatus
{
    /// <summary>Waits for its turn.</summary>
    Queued,

    Running,

    /// <summary>Its proposal is kept.</summary>
    Done,

    /// <summary>It could not be done; it says why.</summary>
    Failed,

    /// <summary>A person stopped it.</summary>
    Cancelled,

    /// <summary>The service ended while it ran. Nothing of it is kept; it can be run again.</summary>
    Interrupted,
}
