using WitherAdvisor.Fields;
using WitherAdvisor.Leaf;

namespace WitherAdvisor.Api.Batches;

/// <summary>What keeps one lot of leaf apart from another.</summary>
public sealed record LabelRequest
{
    /// <summary>Division of the estate.</summary>
    /// <example>Upper division</example>
    [Text(80)]
    public required string Division { get; init; }

    /// <summary>Field that it was plucked in.</summary>
    /// <example>Field 7</example>
    [Text(80)]
    public required string Field { get; init; }

    /// <summary>Cultivar of the bushes; unknown when left out.</summary>
    /// <example>Clone A (invented)</example>
    [Text(80)]
    public string? Cultivar { get; init; }

    /// <summary>Whether the bushes are young or mature; unknown when left out.</summary>
    /// <example>mature</example>
    public BushAge? BushAge { get; init; }

    /// <summary>Standard of plucking; fine is at least 75 % by weight two leaves and a bud, or softer. Unknown when left out.</summary>
    /// <example>fine</example>
    public LeafStandard? LeafStandard { get; init; }

    internal LeafLabel ToDomain() => new(Division, Field, Cultivar, BushAge, LeafStandard);

    internal static LabelRequest Of(LeafLabel label) => new()
    {
        Division = label.Division,
        Field = label.Field,
        Cultivar = label.Cultivar,
        BushAge = label.BushAge,
        LeafStandard = label.Standard,
    };
}
