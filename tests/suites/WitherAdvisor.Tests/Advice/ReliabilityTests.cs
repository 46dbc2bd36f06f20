using System.Globalization;
using WitherAdvisor.SyntheticSeasons;
using Xunit;

namespace WitherAdvisor.Tests.Advice;

public sealed class ReliabilityTests(ITestOutputHelper output)
{
    private const double Wanted = 0.80;
    private const double Tolerance = 0.03;

    /// <summary>Percent, by the issue that asked for these tables.</summary>
    private const double LeastInTable = 79;

    private const int FirstBatches = 300;

    /// <summary>Two standard deviations of so few batches.</summary>
    private const double ToleranceOfFirst = 0.05;

    private static readonly string Document = RepositoryFiles.InRoot(
        "tests", "tools", "WitherAdvisor.SyntheticSeasons", "RELIABILITY.md");

    [Fact]
    public void Eight_batches_of_ten_are_ready_between_P10_and_P90()
    {
        Reliability reliability = Reliability.Of(Reliability.Batches);
        output.WriteLine(reliability.Table());

        Assert.True(reliability.Count >= 2_000, $"{reliability.Count} batches had a plan");
        Assert.InRange(reliability.Held, Wanted - Tolerance, Wanted + Tolerance);
        Assert.Equal(HeldAsCommitted("all"), 100 * reliability.Held, 0.5);
    }

    public static TheoryData<string> Parts() => [.. Withholding.Select(part => part.Name)];

    private static readonly Withheld[] Withholding = [Withheld.Sun, Withheld.Wind, Withheld.SunAndWind, Withheld.HalfOfRain];

    // Every batch is in the committed table; these are its first.
    [Theory]
    [MemberData(nameof(Parts))]
    public void Eight_batches_of_ten_are_ready_between_P10_and_P90_with_a_part_of_the_weather_withheld(string part)
    {
        Reliability reliability = Reliability.Of(FirstBatches, withheld: Withholding.Single(one => one.Name == part));
        output.WriteLine(reliability.Row(part));

        Assert.True(reliability.Held >= Wanted - ToleranceOfFirst, $"{reliability.Held:P1} held");
        Assert.True(HeldAsCommitted($"without {part}") >= LeastInTable);
    }

    [Fact]
    public void Lofts_whose_skin_is_off_by_40_percent_are_ready_between_P10_and_P90()
    {
        Reliability reliability = Reliability.Of(FirstBatches, skinOff: Math.Log(1.4));
        output.WriteLine(reliability.Row("g_0"));

        Assert.True(reliability.Held >= Wanted - ToleranceOfFirst, $"{reliability.Held:P1} held");
        Assert.True(HeldAsCommitted("g_0 off by 40 %") >= LeastInTable);
    }

    // A band that any truth would stay in proves nothing.
    [Fact]
    public void Lofts_further_from_the_defaults_than_the_advice_thinks_are_told_from_the_others()
    {
        const int Batches = 400;
        Reliability reliability = Reliability.Of(Batches, wider: 1.5);

        Assert.True(reliability.Held < Wanted - Tolerance, $"{reliability.Held:P1} held");
    }

    [Fact]
    public void A_batch_of_a_number_is_the_same_always() =>
        Assert.Equal(SyntheticBatch.Draw(7).Truth, SyntheticBatch.Draw(7).Truth);

    private static double HeldAsCommitted(string batches)
    {
        string line = File.ReadLines(Document).First(line => line.StartsWith($"| {batches} |", StringComparison.Ordinal));
        return double.Parse(line.Split('|')[4], CultureInfo.InvariantCulture);
    }
}
