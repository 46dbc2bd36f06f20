using System.Collections;

namespace WitherAdvisor.Leaf;

/// <summary>Lots in the order of their loading, the same whatever order they came in; equal where each lot is.</summary>
internal sealed class LotsInOrder : IReadOnlyList<LeafLot>
{
    private readonly LeafLot[] lots;

    public LotsInOrder(IEnumerable<LeafLot> lots) => this.lots =
    [
        .. lots.OrderBy(lot => lot.LoadedAt)
            .ThenBy(lot => lot.IsExpected)
            .ThenBy(lot => lot.GreenWeightKg)
            .ThenBy(lot => lot.Label?.Division, StringComparer.Ordinal)
            .ThenBy(lot => lot.Label?.Field, StringComparer.Ordinal)
            .ThenBy(lot => lot.Label?.Cultivar, StringComparer.Ordinal)
            .ThenBy(lot => lot.Label?.BushAge)
            .ThenBy(lot => lot.Label?.Standard)
            .ThenBy(lot => lot.PluckedFrom)
            .ThenBy(lot => lot.PluckedTo)
            .ThenBy(lot => lot.MeasuredSurfaceWaterKgPerKg)
            .ThenBy(lot => lot.SurfaceFeel)
            .ThenBy(lot => lot.MeasuredMoistureWetBasis),
    ];

    public int Count => lots.Length;

    public LeafLot this[int index] => lots[index];

    public IEnumerator<LeafLot> GetEnumerator() => lots.AsEnumerable().GetEnumerator();

    public override bool Equals(object? obj) => obj is LotsInOrder other && lots.SequenceEqual(other.lots);

    public override int GetHashCode() => lots.Aggregate(0, HashCode.Combine);

    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();
}
