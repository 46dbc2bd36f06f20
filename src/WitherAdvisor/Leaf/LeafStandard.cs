namespace WitherAdvisor.Leaf;

/// <summary>Standard of plucking.</summary>
public enum LeafStandard
{
    /// <summary>At least 75 % by weight two leaves and a bud, or softer (published: Tocklai manufacture notes).</summary>
    Fine,

    /// <summary>Between fine and coarse.</summary>
    Medium,

    /// <summary>Third leaf and stalk in quantity.</summary>
    Coarse,
}
