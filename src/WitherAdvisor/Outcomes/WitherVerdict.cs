namespace WitherAdvisor.Outcomes;

/// <summary>How far the maker found the leaf withered.</summary>
public enum WitherVerdict
{
    Under,
    Right,
    Over,
}
