using WitherAdvisor.Leaf;

namespace WitherAdvisor.Recalibration.Fitting;

/// <summary>Leaf of one cultivar and standard. Leaf of which nobody said either belongs to none.</summary>
internal readonly record struct LeafGroup(string? Cultivar, LeafStandard? Standard)
{
    public bool IsNamed => Cultivar is not null || Standard is not null;

    public static LeafGroup Of(ObservedWither wither) => new(wither.Cultivar, wither.Standard);

    /// <summary>The named ones among withers, in an order of their own.</summary>
    public static LeafGroup[] Among(IEnumerable<ObservedWither> withers) =>
    [
        .. withers.Select(Of).Where(group => group.IsNamed).Distinct()
            .OrderBy(group => group.Cultivar, StringComparer.Ordinal).ThenBy(group => group.Standard),
    ];
}
