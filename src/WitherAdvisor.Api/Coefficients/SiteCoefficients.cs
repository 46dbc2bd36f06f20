using System.Text.Json;
using WitherAdvisor.Fields.Json;
using WitherAdvisor.Leaf;

namespace WitherAdvisor.Api.Coefficients;

/// <summary>A site's coefficient set as it is kept: for all its leaf, and for leaf of one cultivar and standard.</summary>
public sealed record SiteCoefficients
{
    /// <summary>For leaf of which nobody says more.</summary>
    public required CoefficientsInput Site { get; init; }

    /// <summary>By cultivar and standard; empty where there is one set for all leaf.</summary>
    public required IReadOnlyList<GroupCoefficients> Groups { get; init; }

    /// <summary>Those for a lot of leaf.</summary>
    internal CoefficientsInput For(LeafLabel label) =>
        Groups.FirstOrDefault(group => group.Cultivar == label.Cultivar && group.LeafStandard == label.Standard)?.Coefficients ?? Site;

    internal string ToJson() => JsonSerializer.Serialize(this, JsonRules.Input);

    internal static SiteCoefficients FromJson(string kept) => JsonSerializer.Deserialize<SiteCoefficients>(kept, JsonRules.Input)!;
}
