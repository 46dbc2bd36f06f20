using WitherAdvisor.Loft.Kept.Sites;
using WitherAdvisor.Store;
using WitherAdvisor.Words;
using WitherAdvisor.Words.Leaf;
using WitherAdvisor.Words.Units;

namespace WitherAdvisor.Api.Pages.Home;

/// <summary>A trough and what lies on it.</summary>
public sealed record TroughOnHand(StoredTrough Trough, IReadOnlyList<BatchOnHand> Batches)
{
    /// <summary>What a person choosing a trough wants to know of it.</summary>
    public string Standing(Wordbook words, PersonUnits units) => Batches.Count == 0
        ? words.Say("trough.empty", ("weight", units.WeightText(Trough.Trough.AreaM2 * Trough.Trough.MostLoadKgPerM2)))
        : words.Say("trough.holds", ("batches", string.Join("; ", Batches.Select(batch => LeafWording.Label(words, batch.Batch.Batch.Label)))));
}
