namespace WitherAdvisor.Leaf;

/// <summary>What keeps one lot of leaf apart from another. Null where nobody said.</summary>
public sealed record LeafLabel(
    string Division,
    string Field,
    string? Cultivar,
    BushAge? BushAge,
    LeafStandard? Standard);
