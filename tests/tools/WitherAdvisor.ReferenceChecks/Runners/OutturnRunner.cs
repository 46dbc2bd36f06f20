using WitherAdvisor.Leaf;
using WitherAdvisor.ReferenceChecks.Cases;

namespace WitherAdvisor.ReferenceChecks.Runners;

/// <summary>The balance of dry matter, in percent.</summary>
public sealed class OutturnRunner : IRunner
{
    public string Name => "outturn";

    public double Ours(ReferenceCase given)
    {
        double green = given.Inputs.Number("green_moisture_percent") / 100;
        double outturn = given.Inputs.Number("outturn_percent") / 100;
        double after = Outturn.MoistureAfterWetBasis(green, outturn);
        return given.Quantity switch
        {
            "water_left_kg_per_100_kg_green" => 100 * outturn * after,
            "moisture_after_percent" => 100 * after,
            _ => throw new InvalidDataException($"unknown quantity {given.Quantity}"),
        };
    }
}
