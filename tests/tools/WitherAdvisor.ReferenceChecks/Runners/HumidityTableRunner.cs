using WitherAdvisor.Air;
using WitherAdvisor.ReferenceChecks.Cases;

namespace WitherAdvisor.ReferenceChecks.Runners;

/// <summary>Relative humidity in percent by dry bulb and depression, at sea level.</summary>
public sealed class HumidityTableRunner : IRunner
{
    public string Name => "humidity_table";

    public double Ours(ReferenceCase given)
    {
        double dryBulbC = given.Inputs.Number("dry_bulb_c");
        return 100 * AirState.FromWetBulb(
            dryBulbC, dryBulbC - given.Inputs.Number("depression_k"), StandardAtmosphere.SeaLevelPressurePa).RelativeHumidity;
    }
}
