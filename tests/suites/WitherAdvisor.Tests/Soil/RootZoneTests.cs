using WitherAdvisor.Soil;
using Xunit;

namespace WitherAdvisor.Tests.Soil;

public sealed class RootZoneTests
{
    [Fact]
    public void Ten_days_without_rain_are_those_of_FAO_56_example_37_digit_by_digit()
    {
        var soil = new RootZone(160, 0.4, 1.2, AdjustsDepletionFraction: false);
        double depletionMm = 55;
        foreach (ReferenceRow row in ReferenceRow.ReadAll("fao56/root-zone-example-37.csv"))
        {
            RootZoneDay day = soil.Day(depletionMm, 0, 5);
            depletionMm = day.DepletionMm;

            Assert.Equal(row.Text("stress"), Printed(day.Stress, 2, row.Text("stress")));
            Assert.Equal(row.Number("given_off_mm"), Math.Round(day.GivenOffMm, 1), 1e-9);
            Assert.Equal(row.Number("depletion_at_end_mm"), Math.Round(depletionMm, 1), 1e-9);
        }
    }

    [Fact]
    public void Rain_beyond_field_capacity_drains()
    {
        RootZoneDay day = RootZone.Tea.Day(20, 65, 5);

        Assert.Equal(0, day.DepletionMm);
        Assert.Equal(65 - 20 - 5, day.DrainedMm, 1e-9);
    }

    [Theory]
    [InlineData(2, 0.52)]
    [InlineData(5, 0.40)]
    [InlineData(8, 0.28)]
    [InlineData(40, 0.10)]
    public void Tea_draws_a_greater_share_without_stress_on_a_day_of_small_demand(double demandMm, double fraction) =>
        Assert.Equal(fraction * RootZone.Tea.TotalAvailableMm, RootZone.Tea.ReadilyAvailableMm(demandMm), 1e-9);

    private static string Printed(double value, int digits, string like) =>
        like.Contains('.', StringComparison.Ordinal) ? value.ToString("F" + digits) : value.ToString("F0");
}
