using System.Text.Json.Nodes;
using WitherAdvisor.Coefficients;
using WitherAdvisor.Leaf;
using WitherAdvisor.Loft.Coefficients;

namespace WitherAdvisor.Api.Tests.Coefficients;

/// <summary>A coefficient set as it is kept for ever.</summary>
public sealed class SetRecordTests
{
    private static readonly SiteSet Set = new(
        new() { SetName = "learned-3", CuticularConductanceMPerS = 0.0012, TurnBlend = 0.07, Spreads = new() { TurnBlend = 0.1, Airflow = 0.04 } },
        [new("Clone A", LeafStandard.Fine, new() { SetName = "learned-3/Clone A/fine", AirflowFactor = 0.9 }), new(null, null, new() { SetName = "rest" })]);

    [Fact]
    public void What_was_written_is_read_back()
    {
        SiteSet read = SetRecord.Read(SetRecord.Write(Set));

        Assert.Equal(Set.Site, read.Site);
        Assert.Equal(Set.Groups, read.Groups);
    }

    [Fact]
    public void A_set_of_a_release_that_wrote_no_format_is_read()
    {
        SiteSet read = SetRecord.Read("""
            {"site":{"skin_conductance_mm_per_s":1.5,"drought_to_wet_moisture_gain_points":7,"spreads":{"turn_blend_points":20}},
             "groups":[{"leaf_standard":"coarse","coefficients":{"set_name":"old/coarse","airflow_factor_percent":110}}]}
            """);

        Assert.Equal(new() { SetName = "inline", CuticularConductanceMPerS = 0.0015, DroughtToWetMoistureGain = 0.07, Spreads = new() { TurnBlend = 0.2 } }, read.Site);
        Assert.Equal([new(null, LeafStandard.Coarse, new() { SetName = "old/coarse", AirflowFactor = 1.1 })], read.Groups);
    }

    [Fact]
    public void A_set_of_a_later_format_is_refused_by_name()
    {
        JsonNode later = JsonNode.Parse(SetRecord.Write(Set))!;
        later["format"] = 7;

        Assert.Contains("format 7", Assert.Throws<InvalidDataException>(() => SetRecord.Read(later.ToJsonString())).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Every_coefficient_and_every_spread_is_kept()
    {
        JsonNode site = JsonNode.Parse(SetRecord.Write(Set))!["site"]!;

        Assert.Equal(CoefficientCatalogue.All.Count(known => known.Status != CoefficientStatus.Definition) + 2, site.AsObject().Count);
        Assert.Equal(typeof(CoefficientSpreads).GetProperties().Length, site["spreads"]!.AsObject().Count);
    }

    [Fact]
    public void Leaf_of_a_group_has_its_own_and_all_other_leaf_the_sites()
    {
        Assert.Equal("learned-3/Clone A/fine", Set.For(new("Upper", "7", "Clone A", null, LeafStandard.Fine)).SetName);
        Assert.Equal("rest", Set.For(new("Upper", "7", null, null, null)).SetName);
        Assert.Equal("learned-3", Set.For(new("Upper", "7", "Clone B", null, LeafStandard.Fine)).SetName);
    }
}
