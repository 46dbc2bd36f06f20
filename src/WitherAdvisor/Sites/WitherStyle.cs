namespace WitherAdvisor.Sites;

/// <summary>How a site withers: what it steers by and the limits it never crosses.</summary>
public sealed record WitherStyle
{
    /// <summary>Leaf reddens above this; no site may set its ceiling higher (published: UPASI Tea Research Foundation).</summary>
    public const double HighestPlenumC = 35;

    public string Name { get; init; } = "short";

    /// <summary>Hygrometric difference wanted under the mesh, K.</summary>
    public double WantedHygrometricDifferenceK { get; init; } = 7.2;

    /// <summary>Moisture at which leaf is ready to roll, wet basis.</summary>
    public double TargetMoistureWetBasis { get; init; } = 0.60;

    /// <summary>Plenum dry bulb never above this, °C.</summary>
    public double PlenumCeilingC { get; init; } = HighestPlenumC;

    /// <summary>
    /// What set-points keep below the ceiling, K: thermometers are off by this much, and a plenum has hot spots (common
    /// practice, no published source).
    /// </summary>
    public double PlenumMarginK { get; init; } = 1;

    /// <summary>Hygrometric difference never above this by heat that is added, K.</summary>
    public double HygrometricDifferenceCeilingK { get; init; } = 10;

    /// <summary>The same while surface water remains, K.</summary>
    public double WetLeafHygrometricDifferenceCeilingK { get; init; } = 12;

    /// <summary>Chemical wither: hours from the last plucking to rolling, at least (published: Tocklai).</summary>
    public double ShortestHoursSincePlucking { get; init; } = 9;

    /// <summary>The same in a dry windy spell (common practice, no published source).</summary>
    public double ShortestHoursSincePluckingInDryWindySpell { get; init; } = 7;

    /// <summary>Hours from the first plucking to rolling, at most (published: 14–18 h usual, well under 30 h).</summary>
    public double LongestHoursSincePlucking { get; init; } = 24;

    /// <summary>Spread of tissue moisture, wettest layer minus driest (wet basis), that turning has to hold.</summary>
    public double ToleratedSpreadWetBasis { get; init; } = 0.03;

    /// <summary>Most turns of one wither: what hands can do in a night (a site setting; nothing published).</summary>
    public int MostTurns { get; init; } = 6;

    /// <summary>No turn in the last hours before rolling: handling for nothing (a site setting; nothing published).</summary>
    public double TurnFreeLastHours { get; init; } = 1;

    /// <summary>Hours between two turns, at least: hourly is common practice in a dry windy spell, no published source.</summary>
    public double LeastHoursBetweenTurns { get; init; } = 1;

    /// <summary>Whether fuel or hours count for more.</summary>
    public WitherPace Pace { get; init; } = WitherPace.Balanced;

    /// <summary>Last hours on ambient air before rolling (a site setting; nothing published).</summary>
    public double CoolingHours { get; init; } = 0.5;

    /// <summary>Hot-air assisted, 6 to 12 h on the trough.</summary>
    public static WitherStyle Short { get; } = new();

    /// <summary>Mostly ambient air, 16 to 18 h on the trough (published South Indian practice).</summary>
    public static WitherStyle Long { get; } = new() { Name = "long", WantedHygrometricDifferenceK = 3 };
}
