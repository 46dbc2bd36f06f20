namespace WitherAdvisor.Leaf;

/// <summary>
/// Moisture of leaf on its two bases. Wet basis: kg of water per kg of wet leaf (0 to below 1). Dry basis: kg of
/// water per kg of dry matter (0 upward).
/// </summary>
public static class Moisture
{
    /// <summary>Dry basis from wet basis: m/(1 − m).</summary>
    public static double DryBasis(double wetBasis) => wetBasis / (1 - wetBasis);

    /// <summary>Wet basis from dry basis: X/(1 + X).</summary>
    public static double WetBasis(double dryBasis) => dryBasis / (1 + dryBasis);
}
