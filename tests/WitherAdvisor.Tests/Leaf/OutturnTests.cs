using WitherAdvisor.Leaf;
using Xunit;

namespace WitherAdvisor.Tests.Leaf;

public sealed class OutturnTests
{
    public static TheoryData<ReferenceRow> WaterLeft => [.. ReferenceRow.ReadAll("outturn/water-left.csv")];

    public static TheoryData<ReferenceRow> MoistureAfter => [.. ReferenceRow.ReadAll("outturn/moisture-after.csv")];

    [Theory]
    [MemberData(nameof(WaterLeft))]
    public void Outturn_leaves_the_water_of_the_dryer_table(ReferenceRow row)
    {
        double greenMoisture = row.Number("green_moisture_percent") / 100;
        double outturn = row.Number("outturn_percent") / 100;

        double waterLeft = 100 * outturn * Outturn.MoistureAfterWetBasis(greenMoisture, outturn);

        Assert.Equal(row.Number("water_left_kg_per_100_kg_green"), waterLeft, 1e-9);
    }

    [Theory]
    [MemberData(nameof(WaterLeft))]
    public void Moisture_after_gives_the_outturn_back(ReferenceRow row)
    {
        double greenMoisture = row.Number("green_moisture_percent") / 100;
        double outturn = row.Number("outturn_percent") / 100;
        double waterLeftKgPerKg = row.Number("water_left_kg_per_100_kg_green") / 100;

        Assert.Equal(outturn, Outturn.FromMoisture(greenMoisture, waterLeftKgPerKg / outturn), 1e-12);
    }

    [Theory]
    [MemberData(nameof(MoistureAfter))]
    public void The_same_outturn_means_very_different_leaf_in_rain_and_in_drought(ReferenceRow row)
    {
        double after = Outturn.MoistureAfterWetBasis(
            row.Number("green_moisture_percent") / 100, row.Number("outturn_percent") / 100);

        Assert.Equal(row.Number("moisture_after_percent"), 100 * after, 0.05);
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
