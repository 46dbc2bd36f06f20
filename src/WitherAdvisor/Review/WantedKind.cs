namespace WitherAdvisor.Review;

/// <summary>Readings that a person can take.</summary>
public enum WantedKind
{
    /// <summary>Dry bulb and wet bulb, now.</summary>
    Bulbs,

    /// <summary>Rain on the gauge, or that none fell.</summary>
    Rain,

    /// <summary>Wind, now.</summary>
    Wind,
}
