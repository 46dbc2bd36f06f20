using WitherAdvisor.Api.Wording;
using WitherAdvisor.Loft.Kept.Sites;

namespace WitherAdvisor.Api.Pages.Home;

/// <summary>A trough and what lies on it.</summary>
public sealed record TroughOnHand(StoredTrough Trough, IReadOnlyList<BatchOnHand> Batches)
{
    /// <summary>What a person choosing a trough wants to know of it.</summary>
    public string Standing(PersonUnits units) => Batches.Count == 0
        ? $"empty, takes {units.WeightText(Trough.Trough.AreaM2 * Trough.Trough.MostLoadKgPerM2)} at most"
        : "still holds " + string.Join("; ", Batches.Select(batch => LeafWording.Label(batch.Batch.Batch.Label)));
}
