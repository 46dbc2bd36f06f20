using WitherAdvisor.Leaf;
using Xunit;

namespace WitherAdvisor.Tests.Leaf;

public sealed class OutturnTests
{
    public static TheoryData<ReferenceRow> WaterLeft => [.. ReferenceRow.ReadAll("outturn/water-left.csv")];

    [Theory]
    [MemberData(nameof(WaterLeft))]
    public void Moisture_after_gives_the_outturn_back(ReferenceRow row)
    {
        double greenMoisture = row.Number("green_moisture_percent") / 100;
        double outturn = row.Number("outturn_percent") / 100;
        double waterLeftKgPerKg = row.Number("water_left_kg_per_100_kg_green") / 100;

        Assert.Equal(outturn, Outturn.FromMoisture(greenMoisture, waterLeftKgPerKg / outturn), 1e-12);
    }

    // 78 % leaf that was weighed with 0.10 kg/kg of water on it: 0.55 × 1.10 = 0.605 of the true leaf weight.
    [Fact]
    public void Water_on_the_leaf_makes_an_outturn_look_harder_than_it_is()
    {
        LeafState leaf = new(0.78, 0.10);
        double witheredKg = 0.55 * 100;
        double moistureAfter = 1 - leaf.DryMatterKg(100) / witheredKg;

        Assert.Equal(0.636, moistureAfter, 0.0005);
        Assert.Equal(0.605, Outturn.FromMoisture(0.78, moistureAfter), 0.0005);
    }
}
