using WitherAdvisor.Loft.Kept.Batches;

namespace WitherAdvisor.Loft.Intake;

/// <summary>Leaf that should be kept apart and is not. A warning: the person in charge decides.</summary>
public abstract record LotWarning
{
    private LotWarning()
    {
    }

    /// <summary>Another batch of the same label lies there: two withers on one trough, where this may be a lot of the other.</summary>
    public sealed record HoldsAnotherBatch(string TroughId, StoredBatch Other) : LotWarning;

    public sealed record HoldsAnotherLabel(string TroughId, StoredBatch Other) : LotWarning;

    public sealed record MixesBushAges(StoredBatch Other) : LotWarning;

    public sealed record MixesCultivars(StoredBatch Other, string Coming, string Lying) : LotWarning;

    public sealed record MixesLeafStandards(StoredBatch Other) : LotWarning;

    /// <summary>All that lies on the trough is more than it takes.</summary>
    public sealed record LoadOverMost(string TroughId, double TogetherKg, double MostKg) : LotWarning;
}
