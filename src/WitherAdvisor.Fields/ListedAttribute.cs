namespace WitherAdvisor.Fields;

/// <summary>How many items a list of a request may have.</summary>
[AttributeUsage(AttributeTargets.Property)]
public sealed class ListedAttribute(int most) : Attribute
{
    public int Fewest { get; init; }

    public int Most { get; } = most;
}
