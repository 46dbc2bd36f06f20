using WitherAdvisor.Leaf;
using WitherAdvisor.Loft.Kept.Batches;
using WitherAdvisor.Loft.Kept.Sites;

namespace WitherAdvisor.Api.Batches;

/// <summary>Keeps lots apart: warns, and never forbids, when leaf of different kinds comes together on a trough.</summary>
internal static class LotKeeping
{
    /// <summary>What is to be said of a batch that comes onto a trough on which others still lie.</summary>
    public static IReadOnlyList<LotWarning> Warnings(
        StoredBatch coming, IReadOnlyList<StoredBatch> lying, StoredTrough trough) =>
        [.. lying.SelectMany(other => Between(coming, other)), .. OverMostLoad(coming, lying, trough)];

    private static IEnumerable<LotWarning> Between(StoredBatch coming, StoredBatch other)
    {
        LeafLabel mine = coming.Batch.Label;
        LeafLabel theirs = other.Batch.Label;
        if (mine != theirs)
        {
            yield return Warning("holds_another_label", other,
                $"Trough {coming.TroughId} still holds leaf of {theirs.Division}, {theirs.Field}; if it has left, mark it unloaded.");
        }

        if (Differ(mine.BushAge, theirs.BushAge))
        {
            yield return Warning("mixes_bush_ages", other, "Leaf of young and of mature bushes would wither together.");
        }

        if (Differ(mine.Cultivar, theirs.Cultivar))
        {
            yield return Warning("mixes_cultivars", other,
                $"Leaf of two cultivars would wither together: {mine.Cultivar} and {theirs.Cultivar}.");
        }

        if (Differ(mine.Standard, theirs.Standard))
        {
            yield return Warning("mixes_leaf_standards", other, "Leaf of two standards of plucking would wither together.");
        }
    }

    private static IEnumerable<LotWarning> OverMostLoad(
        StoredBatch coming, IReadOnlyList<StoredBatch> lying, StoredTrough trough)
    {
        double togetherKg = coming.Batch.GreenWeightKg + lying.Sum(other => other.Batch.GreenWeightKg);
        double mostKg = LoadLimit.MostKg(trough.Trough);
        if (lying.Count > 0 && togetherKg > mostKg)
        {
            yield return Warning("load_over_most", null,
                $"Together {togetherKg:0.#} kg of green leaf came onto trough {trough.Id}, which takes {mostKg:0.#} kg.");
        }
    }

    // What nobody said is not known to differ.
    private static bool Differ<T>(T? mine, T? theirs) => mine is not null && theirs is not null && !mine.Equals(theirs);

    private static LotWarning Warning(string code, StoredBatch? other, string text) =>
        new() { Code = code, OtherBatch = other?.Id, Text = text };
}
