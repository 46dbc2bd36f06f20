namespace WitherAdvisor.Outcomes;

/// <summary>Whether the maker found the leaf withered alike throughout the bed.</summary>
public enum EvennessVerdict
{
    Even,
    Uneven,
}
