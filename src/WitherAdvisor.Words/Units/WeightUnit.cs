namespace WitherAdvisor.Words.Units;

/// <summary>The unit a person reads their scales in.</summary>
public enum WeightUnit
{
    Kilogram,
    Pound,
}
