namespace WitherAdvisor.Troughs;

/// <summary>Air under the mesh.</summary>
/// <param name="DryBulbC">°C.</param>
/// <param name="HumidityRatio">kg of vapour per kg of dry air.</param>
public readonly record struct InletAir(double DryBulbC, double HumidityRatio)
{
    /// <summary>The air a share of the way (0 to 1) from one state to another.</summary>
    public static InletAir Between(InletAir from, InletAir to, double share) =>
        new(from.DryBulbC + share * (to.DryBulbC - from.DryBulbC),
            from.HumidityRatio + share * (to.HumidityRatio - from.HumidityRatio));
}
