namespace WitherAdvisor.Review;

/// <summary>A reading that would help.</summary>
/// <param name="Kind">Of what.</param>
/// <param name="Since">Rain: from when on it is not known from readings. Null for what is read now.</param>
public sealed record WantedReading(WantedKind Kind, DateTimeOffset? Since = null);
