using WitherAdvisor.Coefficients;
using WitherAdvisor.Leaf;

namespace WitherAdvisor.Loft.Coefficients;

/// <summary>A site's coefficient set: for all its leaf, and for leaf of one cultivar and standard.</summary>
/// <param name="Site">For leaf of which nobody says more.</param>
/// <param name="Groups">By cultivar and standard; empty where there is one set for all leaf.</param>
public sealed record SiteSet(WitherCoefficients Site, IReadOnlyList<GroupSet> Groups)
{
    /// <summary>Letters of a set's name: those of sets by cultivar and standard hold both.</summary>
    public const int LongestName = 160;

    /// <summary>What the defaults are called.</summary>
    public static string DefaultsName { get; } = new WitherCoefficients().SetName;

    /// <summary>Those for a lot of leaf.</summary>
    public WitherCoefficients For(LeafLabel label) =>
        Groups.FirstOrDefault(group => group.Cultivar == label.Cultivar && group.Standard == label.Standard)?.Coefficients ?? Site;
}
