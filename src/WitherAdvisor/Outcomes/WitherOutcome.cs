namespace WitherAdvisor.Outcomes;

/// <summary>What came of withering a batch. Null is unknown; an empty list says that nobody wrote anything down.</summary>
public sealed record WitherOutcome
{
    /// <summary>Air as it was set, by hour.</summary>
    public IReadOnlyList<AirHeld> AirSet { get; init; } = [];

    /// <summary>Air as it was measured under the mesh, by hour.</summary>
    public IReadOnlyList<AirHeld> AirMeasured { get; init; } = [];

    /// <summary>How often the leaf was turned.</summary>
    public int? Turns { get; init; }

    /// <summary>When the leaf was turned, hours from loading.</summary>
    public IReadOnlyList<double> TurnedAtHours { get; init; } = [];

    /// <summary>Weight of the withered leaf, kg.</summary>
    public double? WitheredWeightKg { get; init; }

    /// <summary>Moisture at the end by the oven, ISO 1573 adapted from made tea to leaf.</summary>
    public double? OvenMoistureWetBasis { get; init; }

    /// <summary>Moisture of samples from three depths.</summary>
    public LayerMoistures Layers { get; init; } = new(null, null, null);

    /// <summary>Samples weighed on the way, by hour.</summary>
    public IReadOnlyList<SampleWeighing> SampleWeighings { get; init; } = [];

    /// <summary>The maker's verdict on how far.</summary>
    public WitherVerdict? Verdict { get; init; }

    /// <summary>The maker's verdict on how evenly.</summary>
    public EvennessVerdict? Evenness { get; init; }

    /// <summary>The taster's marks.</summary>
    public IReadOnlyList<TasterMark> Marks { get; init; } = [];

    /// <summary>Faults seen, a few words each.</summary>
    public IReadOnlyList<string> Faults { get; init; } = [];

    /// <summary>The weather in a word or two, as a log has it.</summary>
    public string? Weather { get; init; }

    /// <summary>Anything else.</summary>
    public string? Note { get; init; }

    /// <summary>Withered weight over green weight as weighed with its surface water; null where not weighed.</summary>
    public double? OutturnOfGreen(double greenWeightKg) => WitheredWeightKg / greenWeightKg;

    /// <summary>Withered weight over the weight of green leaf without its surface water; null where either is unknown.</summary>
    /// <param name="surfaceWaterKgPerKg">Per kg of leaf without it.</param>
    public double? OutturnOfLeaf(double greenWeightKg, double? surfaceWaterKgPerKg) =>
        WitheredWeightKg * (1 + surfaceWaterKgPerKg) / greenWeightKg;

    /// <summary>
    /// Moisture (wet basis) that the leaf must have had at loading, its surface water counted in, for both the weights and
    /// the oven test to be right; null where either is missing. Dry matter is the same before and after.
    /// </summary>
    public double? ImpliedGreenMoistureWetBasis(double greenWeightKg) =>
        1 - WitheredWeightKg * (1 - OvenMoistureWetBasis) / greenWeightKg;
}
