namespace WitherAdvisor.Api.ModelCard.Responses;

/// <summary>How far the truth of one loft may lie from a default: a standard deviation, from memory.</summary>
public sealed record SpreadResponse
{
    /// <summary>Symbol of the coefficient; null for the airflow of a trough.</summary>
    /// <example>g_0</example>
    public required string? Symbol { get; init; }

    /// <summary>Whether it is of the logarithm, a share of the value; else it is in the value's own unit.</summary>
    /// <example>true</example>
    public required bool IsOfLogarithm { get; init; }

    /// <summary>A share of the value, or percentage points of moisture.</summary>
    /// <example>15</example>
    public required double Percent { get; init; }

    /// <summary>What it stands for.</summary>
    /// <example>What a fan is said to blow and what it blows.</example>
    public required string Meaning { get; init; }
}
