namespace WitherAdvisor.Api.Tests.KeptBefore;

/// <summary>
/// What is called otherwise since a version was released: the one place where a rename is told to these tests. It turns
/// what was shown then into what is shown now; an advice's bytes as sent, and its input, never change and are not touched.
/// </summary>
internal static class Renamed
{
    /// <summary>Members and codes of JSON answers, and columns and codes of exports, each with its quotes or alone as it stands there.</summary>
    public static readonly IReadOnlyList<(string Then, string Now)> Codes =
    [
        ("leaf_area_dry_m2_per_kg", "specific_leaf_area_m2_per_kg"),
        ("boundary_conductance", "boundary_layer_conductance"),
        ("skin_conductance", "cuticular_conductance"),
        ("hardly_told_apart", "confounded"),
        ("\"told\":\"told\"", "\"identifiability\":\"identified\""),
        ("\"told\":\"not_told\"", "\"identifiability\":\"not_identified\""),
        ("\"told\":\"partly\"", "\"identifiability\":\"partly\""),
        ("come_again_at", "retry_after"),
    ];

    /// <summary>Words of pages that hold a number, such as the name of a method with its year.</summary>
    public static readonly IReadOnlyList<(string Then, string Now)> Words =
    [
        // A sentence said its only number twice.
        ("judged by hand: by hand 7.0 %.", "judged by hand."),
    ];

    /// <summary>Parts of a page that are headed otherwise, by the id of their heading.</summary>
    public static readonly IReadOnlyList<(string Then, string Now)> Parts = [];

    public static string By(IReadOnlyList<(string Then, string Now)> table, string text) =>
        table.Aggregate(text, (changed, rename) => changed.Replace(rename.Then, rename.Now, StringComparison.Ordinal));
}
