using WitherAdvisor.Leaf;
using WitherAdvisor.Loft.Kept.Batches;
using WitherAdvisor.Loft.Kept.Sites;

namespace WitherAdvisor.Loft.Intake;

/// <summary>Keeps lots apart: warns, and never forbids, when leaf of different kinds comes together on a trough.</summary>
public static class LotKeeping
{
    /// <summary>What is to be said of a batch that comes onto a trough on which others still lie.</summary>
    public static IReadOnlyList<LotWarning> Warnings(
        StoredBatch coming, IReadOnlyList<StoredBatch> lying, StoredTrough trough) =>
        [.. lying.SelectMany(other => Between(coming, other)), .. Within(coming), .. OverMostLoad(coming, lying, trough)];

    /// <summary>What is to be said of a lot that comes onto a batch: kinds of leaf that should be kept apart.</summary>
    public static IReadOnlyList<LotWarning> Warnings(LeafLot coming, StoredBatch onto) =>
        coming.Label is { } label ? [.. Mixing(label, onto)] : [];

    private static IEnumerable<LotWarning> Within(StoredBatch coming) =>
        coming.Batch.Lots.SelectMany(lot => Warnings(lot, coming)).DistinctBy(warning => warning.GetType());

    private static IEnumerable<LotWarning> Between(StoredBatch coming, StoredBatch other)
    {
        LeafLabel mine = coming.Batch.Label;
        LeafLabel theirs = other.Batch.Label;
        yield return mine == theirs
            ? new LotWarning.HoldsAnotherBatch(coming.TroughId, other)
            : new LotWarning.HoldsAnotherLabel(coming.TroughId, other);
        foreach (LotWarning mixes in Mixing(mine, other))
        {
            yield return mixes;
        }
    }

    private static IEnumerable<LotWarning> Mixing(LeafLabel mine, StoredBatch other)
    {
        LeafLabel theirs = other.Batch.Label;
        if (Differ(mine.BushAge, theirs.BushAge))
        {
            yield return new LotWarning.MixesBushAges(other);
        }

        if (Differ(mine.Cultivar, theirs.Cultivar))
        {
            yield return new LotWarning.MixesCultivars(other, mine.Cultivar!, theirs.Cultivar!);
        }

        if (Differ(mine.Standard, theirs.Standard))
        {
            yield return new LotWarning.MixesLeafStandards(other);
        }
    }

    private static IEnumerable<LotWarning> OverMostLoad(
        StoredBatch coming, IReadOnlyList<StoredBatch> lying, StoredTrough trough)
    {
        double togetherKg = coming.Batch.GreenWeightKg + lying.Sum(other => other.Batch.GreenWeightKg);
        double mostKg = BatchRules.MostKg(trough.Trough);
        if (lying.Count > 0 && togetherKg > mostKg)
        {
            yield return new LotWarning.LoadOverMost(trough.Id, togetherKg, mostKg);
        }
    }

    // What nobody said is not known to differ.
    private static bool Differ<T>(T? mine, T? theirs) => mine is not null && theirs is not null && !mine.Equals(theirs);
}
