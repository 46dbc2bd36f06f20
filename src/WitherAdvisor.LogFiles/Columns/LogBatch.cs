using WitherAdvisor.Fields;
using WitherAdvisor.Leaf;

namespace WitherAdvisor.LogFiles.Columns;

/// <summary>What the log says of a batch. Empty is unknown.</summary>
internal abstract record LogBatch
{
    internal const int LongestId = 60;
    internal const string IdPattern = "^[0-9a-zA-Z-]+$";

    [Meaning(LogPart.Batch, "Id of the batch, made by the service; leave out for batches that it does not know yet.")]
    [Text(LongestId, Pattern = IdPattern)]
    public string? BatchId { get; init; }

    [Meaning(LogPart.Batch, "Id of the site; the one that the log is of.")]
    [Text(Slug.Longest, Pattern = Slug.Pattern)]
    public string? Site { get; init; }

    [Meaning(LogPart.Batch, "Id of the trough.")]
    [Text(Slug.Longest, Pattern = Slug.Pattern)]
    public required string Trough { get; init; }

    [Meaning(LogPart.Batch, "Division of the estate.")]
    [Text(80)]
    public required string Division { get; init; }

    [Meaning(LogPart.Batch, "Field that it was plucked in.")]
    [Text(80)]
    public required string Field { get; init; }

    [Meaning(LogPart.Batch, "Cultivar of the bushes.")]
    [Text(80)]
    public string? Cultivar { get; init; }

    [Meaning(LogPart.Batch, "Whether the bushes are young or mature.")]
    public BushAge? BushAge { get; init; }

    [Meaning(LogPart.Batch, "Standard of plucking; fine is at least 75 % by weight two leaves and a bud, or softer.")]
    public LeafStandard? LeafStandard { get; init; }

    [Meaning(LogPart.Batch, "When plucking of it began; give both times of plucking or neither.")]
    public DateTimeOffset? PluckedFrom { get; init; }

    [Meaning(LogPart.Batch, "When plucking of it ended.")]
    public DateTimeOffset? PluckedTo { get; init; }

    [Meaning(LogPart.Batch, "When it lay on the trough with the air on.")]
    public required DateTimeOffset LoadedAt { get; init; }

    [Meaning(LogPart.Batch, "Weight as it came in, with its surface water.")]
    [Measured(1, 30000)]
    public required double GreenWeightKg { get; init; }

    [Meaning(LogPart.Batch, "Water on the leaf per kg of leaf without it, measured at loading by blotting or spinning.")]
    [Measured(0, 0.6)]
    public double? MeasuredSurfaceWaterKgPerKg { get; init; }

    [Meaning(LogPart.Batch, "Water on the leaf by a squeezed handful at loading.")]
    public SurfaceFeel? SurfaceFeel { get; init; }

    [Meaning(LogPart.Batch, "Moisture of the green leaf without its surface water, oven-dry.")]
    [Measured(60, 90)]
    public double? MeasuredMoistureWetBasisPercent { get; init; }

    [Meaning(LogPart.Batch, "When rolling wanted the leaf.")]
    public DateTimeOffset? ReadyBy { get; init; }

    [Meaning(LogPart.Batch, "When the batch was entered.")]
    public DateTimeOffset? CreatedAt { get; init; }
}
