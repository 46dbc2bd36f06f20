using WitherAdvisor.Leaf;

namespace WitherAdvisor.Loft.Kept.Batches;

/// <summary>A batch with its times as the store answers them.</summary>
public static class BatchInUtc
{
    public static Batch InUtc(this Batch batch) => batch with
    {
        PluckedFrom = batch.PluckedFrom.ToUniversalTime(),
        PluckedTo = batch.PluckedTo.ToUniversalTime(),
        LoadedAt = batch.LoadedAt.ToUniversalTime(),
        ReadyBy = batch.ReadyBy?.ToUniversalTime(),
        Lots = [.. batch.Lots.Select(InUtc)],
    };

    public static LeafLot InUtc(this LeafLot lot) => lot with
    {
        PluckedFrom = lot.PluckedFrom?.ToUniversalTime(),
        PluckedTo = lot.PluckedTo?.ToUniversalTime(),
        LoadedAt = lot.LoadedAt.ToUniversalTime(),
    };
}
