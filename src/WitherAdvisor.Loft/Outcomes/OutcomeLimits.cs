namespace WitherAdvisor.Loft.Outcomes;

/// <summary>Where an outcome begins to look odd, and where it cannot be. Common practice, no published source, unless said.</summary>
public static class OutcomeLimits
{
    /// <summary>Leaf reddens above (published).</summary>
    public const double HottestC = 35;

    public const double WidestDifferenceK = 15;
    public const double FewestHours = 3;
    public const double MostHours = 30;
    public const double LeastOutturn = 0.35;
    public const double MostOutturn = 0.85;
    public const double DriestOven = 0.45;
    public const double WettestOven = 0.8;

    /// <summary>Green leaf is hardly ever drier.</summary>
    public const double DriestGreenLeaf = 0.6;

    /// <summary>Green leaf is never wetter, its surface water left out.</summary>
    public const double WettestGreenLeaf = 0.9;

    /// <summary>More water never stays on leaf, kg per kg without it: the most that a measurement may say.</summary>
    public const double MostSurfaceWaterKgPerKg = 0.6;

    public const double WidestLayerSpread = 0.15;
    public const double MostTurnsAnHour = 2;

    /// <summary>What weighing a sample twice may differ by.</summary>
    public const double SampleError = 0.02;

    /// <summary>What a sample may differ from the whole bed by.</summary>
    public const double SampleAgainstBed = 0.15;

    /// <summary>Clocks on a wall and in a log differ.</summary>
    public const double HoursOfClocks = 0.5;
}
