namespace WitherAdvisor.Fields;

/// <summary>
/// The range that a number of a request has to lie in, ends included. Its unit is the suffix of its JSON name.
/// On a list it holds for each number in it. The check and the OpenAPI document both read it, so they cannot
/// drift apart.
/// </summary>
[AttributeUsage(AttributeTargets.Property)]
public sealed class MeasuredAttribute(double least, double most) : Attribute
{
    public double Least { get; } = least;

    public double Most { get; } = most;
}
