using WitherAdvisor.Leaf;

namespace WitherAdvisor.Loft.Records.Format1;

/// <summary>The batch of a kept request.</summary>
internal static class RestLeaf
{
    public static Batch Batch(RestFields batch)
    {
        RestFields label = batch.Object("label");
        RestFields? water = batch.ObjectOrNull("surface_water");
        return new(
            new(
                label.Text("division"), label.Text("field"), label.TextOrNull("cultivar"),
                label.WordOrNull<BushAge>("bush_age"), label.WordOrNull<LeafStandard>("leaf_standard")),
            batch.Time("plucked_from"),
            batch.Time("plucked_to"),
            batch.Time("loaded_at"),
            batch.Number("green_weight_kg"),
            water?.NumberOrNull("measured_kg_per_kg"),
            water?.WordOrNull<SurfaceFeel>("feel"),
            batch.NumberOrNull("measured_moisture_wet_basis_percent") / 100,
            batch.TimeOrNull("ready_by"));
    }
}
