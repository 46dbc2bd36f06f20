namespace WitherAdvisor.Leaf;

/// <summary>Outturn: withered weight over green weight, as a fraction. What the trade weighs.</summary>
/// <remarks>
/// The identity of dry matter before and after: it reproduces the published cells of a trade dryer table for leaf
/// of 82, 78 and 74 % wet basis. The same outturn means very different leaf in rain and in drought.
/// </remarks>
public static class Outturn
{
    /// <summary>Moisture (wet basis) of leaf withered to an outturn, from its moisture (wet basis) when green.</summary>
    public static double MoistureAfterWetBasis(double greenMoistureWetBasis, double outturn) =>
        1 - (1 - greenMoistureWetBasis) / outturn;

    /// <summary>Outturn of leaf withered from one moisture to another (both wet basis).</summary>
    public static double FromMoisture(double greenMoistureWetBasis, double witheredMoistureWetBasis) =>
        (1 - greenMoistureWetBasis) / (1 - witheredMoistureWetBasis);
}
