
namespace WitherAdvisor.Leaf;

/// <summary>A batch of leaf on a trough, loaded at once or in lots.</summary>
/// <remarks>Where it came in lots, its own members tell of all of it: the first label, the span of plucking, the first loading, the whole weight.</remarks>
/// <param name="Label">What keeps it apart from other lots.</param>
/// <param name="PluckedFrom">When plucking of it began.</param>
/// <param name="PluckedTo">When plucking of it ended.</param>
/// <param name="LoadedAt">When it lay on the trough with the air on; hour 0 of the plan.</param>
/// <param name="GreenWeightKg">Weight as it came in, with its surface water, kg.</param>
/// <param name="MeasuredSurfaceWaterKgPerKg">By weighing a sample before and after blotting or spinning, kg per kg of leaf without its surface water; null where nobody did.</param>
/// <param name="SurfaceFeel">By hand; null where nobody said.</param>
/// <param name="MeasuredMoistureWetBasis">Of leaf without its surface water, oven-dry (ISO 1573 adapted from made tea to leaf); null where nobody did.</param>
/// <param name="ReadyBy">When rolling wants it; null where any time will do.</param>
public sealed record Batch(
    LeafLabel Label,
    DateTimeOffset PluckedFrom,
    DateTimeOffset PluckedTo,
    DateTimeOffset LoadedAt,
    double GreenWeightKg,
    double? MeasuredSurfaceWaterKgPerKg = null,
    SurfaceFeel? SurfaceFeel = null,
    double? MeasuredMoistureWetBasis = null,
    DateTimeOffset? ReadyBy = null)
{
    private readonly LotsInOrder lots = new([]);

    /// <summary>Its lots in order of loading, two or more; none where it was loaded at once.</summary>
    public IReadOnlyList<LeafLot> Lots
    {
        get => lots;
        init => lots = new(value);
    }

    /// <summary>Its lots, one where it was loaded at once; what nobody said of a lot is as of the first that tells it.</summary>
    public IReadOnlyList<LeafLot> EachLot =>
        Lots.Count == 0
            ? [new(LoadedAt, GreenWeightKg, Label, PluckedFrom, PluckedTo, MeasuredSurfaceWaterKgPerKg, SurfaceFeel, MeasuredMoistureWetBasis)]
            : FilledIn(Lots);

    /// <summary>When the last of its lots lies on the trough.</summary>
    public DateTimeOffset LastLoadedAt => Lots.Count == 0 ? LoadedAt : Lots[^1].LoadedAt;

    /// <summary>When the last lot came that is known to lie there.</summary>
    public DateTimeOffset LastCameAt => Lots.LastOrDefault(lot => !lot.IsExpected)?.LoadedAt ?? LoadedAt;

    /// <summary>A batch of lots in any order. One lot alone is the same as a batch without lots.</summary>
    /// <exception cref="ArgumentException">No lot says its label, or when it was plucked.</exception>
    public static Batch OfLots(IReadOnlyList<LeafLot> lots, DateTimeOffset? readyBy = null)
    {
        IReadOnlyList<LeafLot> each = FilledIn(new LotsInOrder(lots));
        LeafLot first = each[0];
        if (first is not { Label: { } label, PluckedFrom: not null, PluckedTo: not null })
        {
            throw new ArgumentException("One lot at least has to say its label and when it was plucked.", nameof(lots));
        }

        var whole = new Batch(
            label, each.Min(lot => lot.PluckedFrom!.Value), each.Max(lot => lot.PluckedTo!.Value), first.LoadedAt,
            each.Sum(lot => lot.GreenWeightKg), ReadyBy: readyBy);
        return each.Count > 1
            ? whole with { Lots = lots }
            : whole with
            {
                MeasuredSurfaceWaterKgPerKg = first.MeasuredSurfaceWaterKgPerKg,
                SurfaceFeel = first.SurfaceFeel,
                MeasuredMoistureWetBasis = first.MeasuredMoistureWetBasis,
            };
    }

    /// <summary>The same batch with other lots, as given: one where it was loaded at once.</summary>
    public Batch WithLots(Func<IReadOnlyList<LeafLot>, IEnumerable<LeafLot>> change) =>
        OfLots([.. change(Lots.Count == 0 ? EachLot : Lots)], ReadyBy);

    private static IReadOnlyList<LeafLot> FilledIn(IReadOnlyList<LeafLot> lots)
    {
        LeafLabel? label = lots.FirstOrDefault(lot => lot.Label is not null)?.Label;
        LeafLot? known = lots.FirstOrDefault(lot => lot.PluckedFrom is not null && lot.PluckedTo is not null);
        return
        [
            .. lots.Select(lot => lot with
            {
                Label = lot.Label ?? label,
                PluckedFrom = lot.PluckedFrom ?? lot.LoadedAt - (known?.LoadedAt - known?.PluckedFrom),
                PluckedTo = lot.PluckedTo ?? lot.LoadedAt - (known?.LoadedAt - known?.PluckedTo),
            }),
        ];
    }
}
