namespace WitherAdvisor.Review;

/// <summary>A value and how it came to be known.</summary>
/// <param name="Value">In the unit of the property that holds it; null exactly where it is unknown.</param>
/// <param name="Standing">How it came to be known.</param>
/// <param name="Reason">Why it is unknown; null where it is known.</param>
public readonly record struct ReviewValue(double? Value, ValueStanding Standing, WhyUnknown? Reason)
{
    /// <summary>A value that is known.</summary>
    public static ReviewValue Known(double value, ValueStanding standing) => new(value, standing, null);

    /// <summary>A value that is not.</summary>
    public static ReviewValue Unknown(WhyUnknown reason) => new(null, ValueStanding.Unknown, reason);
}
