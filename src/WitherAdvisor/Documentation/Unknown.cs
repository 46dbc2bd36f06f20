namespace WitherAdvisor.Documentation;

/// <summary>Something that the model knows nothing of.</summary>
/// <param name="Code">snake_case name.</param>
public sealed record Unknown(string Code)
{
    /// <summary>All that is left out and may matter.</summary>
    public static IReadOnlyList<Unknown> All { get; } =
    [
        new("quality"),
        new("leaf_damage"),
        new("chemistry"),
        new("open_loft"),
        new("leaf_heat"),
        new("respiration"),
        new("uneven_spread"),
        new("mixed_lots"),
        new("sunlight"),
        new("soil_start"),
        new("clamps"),
        new("fog"),
        new("real_lofts"),
    ];
}
