using WitherAdvisor.InventedEstate;
using Xunit;

namespace WitherAdvisor.Tests;

public sealed class InventedEstateTests
{
    private static readonly string Folder = RepositoryFiles.InRoot("fixtures", "invented-estate");

    private static readonly IReadOnlyDictionary<string, string> Made = EstateFiles.Make(EstateFiles.Seed);

    public static TheoryData<string> Files => [.. Made.Keys];

    [Theory]
    [MemberData(nameof(Files))]
    public void The_generator_writes_the_committed_bytes(string file) =>
        Assert.Equal(File.ReadAllText(Path.Combine(Folder, file)), Made[file]);

    [Fact]
    public void Nothing_but_the_generator_writes_there() =>
        Assert.Equal(
            Made.Keys.Append("README.md").Order(StringComparer.Ordinal),
            Directory.EnumerateFiles(Folder).Select(file => Path.GetFileName(file)).Order(StringComparer.Ordinal));

    [Fact]
    public void Another_seed_makes_other_weather() =>
        Assert.NotEqual(Made["wet-spell.csv"], EstateFiles.Make(EstateFiles.Seed + 1)["wet-spell.csv"]);

    // First outputs of the published algorithm for seed 1234567, as printed by the reference code in C.
    [Fact]
    public void Random_numbers_are_those_of_the_published_generator()
    {
        SplitMix64 random = new(1234567);

        Assert.Equal(6457827717110365317UL, random.Next());
        Assert.Equal(3203168211198807973UL, random.Next());
        Assert.Equal(9817491932198370423UL, random.Next());
    }

    [Theory]
    [InlineData("wet-spell.csv")]
    [InlineData("dry-windy-spell.csv")]
    public void A_stretch_is_two_weeks_of_hours_without_a_gap(string file)
    {
        string[] lines = Made[file].TrimEnd('\n').Split('\n')[1..];
        DateTimeOffset[] times = [.. lines.Select(line => DateTimeOffset.Parse(line.Split(',')[0]))];

        Assert.True(times[^1] - times[0] >= TimeSpan.FromDays(14));
        Assert.All(times.Zip(times.Skip(1)), pair => Assert.Equal(TimeSpan.FromHours(1), pair.Second - pair.First));
    }

    [Fact]
    public void Dew_point_never_passes_dry_bulb() =>
        Assert.All(
            Made.Where(file => file.Key.EndsWith(".csv", StringComparison.Ordinal)).SelectMany(file => file.Value.TrimEnd('\n').Split('\n')[1..]),
            line => Assert.True(double.Parse(line.Split(',')[2]) <= double.Parse(line.Split(',')[1]), line));
}
