using WitherAdvisor.Loft.Intake;

namespace WitherAdvisor.Words.Leaf;

/// <summary>Leaf that should be kept apart, in words.</summary>
public static class LotWarningWording
{
    public static string Sentence(LotWarning warning) => warning switch
    {
        LotWarning.HoldsAnotherLabel holds =>
            $"Trough {holds.TroughId} still holds leaf of {holds.Other.Batch.Label.Division}, {holds.Other.Batch.Label.Field}; if it has left, mark it unloaded.",
        LotWarning.MixesBushAges => "Leaf of young and of mature bushes would wither together.",
        LotWarning.MixesCultivars mixes => $"Leaf of two cultivars would wither together: {mixes.Coming} and {mixes.Lying}.",
        LotWarning.MixesLeafStandards => "Leaf of two standards of plucking would wither together.",
        LotWarning.LoadOverMost load =>
            $"Together {load.TogetherKg:0.#} kg of green leaf came onto trough {load.TroughId}, which takes {load.MostKg:0.#} kg.",
        _ => throw new ArgumentOutOfRangeException(nameof(warning), warning, "No words for this warning."),
    };
}
