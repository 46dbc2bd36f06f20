using WitherAdvisor.Fields;

namespace WitherAdvisor.Api.Tests.Input;

public sealed class UnitTests
{
    [Theory]
    [InlineData("dry_bulb_c", "°C")]
    [InlineData("most_load_kg_per_m2", "kg/m²")]
    [InlineData("area_m2", "m²")]
    [InlineData("surface_water_kg_per_kg", "kg/kg")]
    [InlineData("airflow_m3_per_s_per_m2", "m³/s per m²")]
    [InlineData("drying_power_kpa_m_per_s", "kPa·m/s")]
    [InlineData("wind_m_per_s", "m/s")]
    [InlineData("rain_mm", "mm")]
    [InlineData("hour", "h")]
    public void The_unit_is_told_by_the_longest_suffix(string name, string symbol) =>
        Assert.Equal(symbol, Unit.OfName(name)!.Symbol);

    [Theory]
    [InlineData("allowed")]
    [InlineData("topic")]
    public void A_name_without_a_suffix_has_no_unit(string name) => Assert.Null(Unit.OfName(name));
}
