using System.Text.Json;
using WitherAdvisor.Air;
using Xunit;

namespace WitherAdvisor.Tests.Air;

/// <summary>The air under the mesh in the bed cases, which an independent program solved with ideal-gas air.</summary>
public sealed class BedCasesAirTests
{
    private const double PrintedToK = 0.006;

    public static TheoryData<string> Cases => [.. ReadCases().Keys];

    [Theory]
    [MemberData(nameof(Cases))]
    public void Hygrometric_difference_under_the_mesh_agrees_and_leads_back_to_the_plenum(string id)
    {
        JsonElement bed = ReadCases()[id];
        double plenumC = bed.GetProperty("plenum_c").GetDouble();
        double expectedK = bed.GetProperty("result").GetProperty("hygrometric_difference_k").GetDouble();
        AirState ambient = AirState.FromRelativeHumidity(
            bed.GetProperty("ambient_c").GetDouble(),
            bed.GetProperty("ambient_rh").GetDouble(),
            StandardAtmosphere.PressurePa(bed.GetProperty("elevation_m").GetDouble()),
            MoistAirFormulation.IdealGas);

        AirState plenum = ambient with { DryBulbC = plenumC };

        Assert.Equal(expectedK, plenum.HygrometricDifferenceK, PrintedToK);
        Assert.Equal(plenumC, HotAirMix.PlenumForHygrometricDifference(ambient, expectedK).DryBulbC, 2 * PrintedToK);
    }

    private static Dictionary<string, JsonElement> ReadCases()
    {
        string path = Path.Combine(AppContext.BaseDirectory, "fixtures", "bed", "bed-cases.json");
        using JsonDocument file = JsonDocument.Parse(File.ReadAllBytes(path));
        return file.RootElement.GetProperty("cases").EnumerateArray()
            .ToDictionary(bed => bed.GetProperty("id").GetString()!, bed => bed.Clone(), StringComparer.Ordinal);
    }
}
