namespace WitherAdvisor.ReferenceChecks.Cases;

/// <summary>How a value is held against the reference.</summary>
public enum ToleranceKind
{
    /// <summary>Within so much of it.</summary>
    Absolute,

    /// <summary>Within such a share of it.</summary>
    Relative,

    /// <summary>Not above it.</summary>
    AtMost,

    /// <summary>Not below it.</summary>
    AtLeast,
}
