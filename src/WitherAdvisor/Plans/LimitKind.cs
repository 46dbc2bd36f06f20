namespace WitherAdvisor.Plans;

/// <summary>The limits and wishes a plan is held against.</summary>
public enum LimitKind
{
    /// <summary>Hard: plenum dry bulb.</summary>
    PlenumDryBulb,

    /// <summary>Hard: hygrometric difference under the mesh.</summary>
    HygrometricDifference,

    /// <summary>Hard: chemical wither, at least.</summary>
    ShortestTimeSincePlucking,

    /// <summary>Hard: time since plucking, at most.</summary>
    LongestTimeSincePlucking,

    /// <summary>Hard: moisture at the stop must lie near the target.</summary>
    TargetMoisture,

    /// <summary>Soft: spread between layers.</summary>
    Spread,

    /// <summary>Soft: wanted ready-by time.</summary>
    ReadyBy,

    /// <summary>Soft: the site's wanted hygrometric difference.</summary>
    WantedHygrometricDifference,

    /// <summary>Hard: temperature of the leaf itself.</summary>
    LeafTemperature,

    /// <summary>What the heater gives, kW.</summary>
    HeaterCapacity,

    /// <summary>No air is known to plan with.</summary>
    AmbientAir,
}
