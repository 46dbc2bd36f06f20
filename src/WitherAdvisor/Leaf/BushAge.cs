namespace WitherAdvisor.Leaf;

/// <summary>Whether the bushes are young or mature; their leaf is kept apart.</summary>
public enum BushAge
{
    Young,
    Mature,
}
