using System.Globalization;
using WitherAdvisor.SyntheticSeasons;
using Xunit;

namespace WitherAdvisor.Tests.Advice;

public sealed class ReliabilityTests(ITestOutputHelper output)
{
    private const double Wanted = 0.80;
    private const double Tolerance = 0.03;

    private static readonly string Document = RepositoryFiles.InRoot(
        "tests", "tools", "WitherAdvisor.SyntheticSeasons", "RELIABILITY.md");

    [Fact]
    public void Eight_batches_of_ten_are_ready_between_P10_and_P90()
    {
        Reliability reliability = Reliability.Of(Reliability.Batches);
        output.WriteLine(reliability.Table());

        Assert.True(reliability.Count >= 2_000, $"{reliability.Count} batches had a plan");
        Assert.InRange(reliability.Held, Wanted - Tolerance, Wanted + Tolerance);
        Assert.Equal(HeldAsCommitted(), 100 * reliability.Held, 0.5);
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

    private static double HeldAsCommitted()
    {
        string all = File.ReadLines(Document).First(line => line.StartsWith("| all |", StringComparison.Ordinal));
        return double.Parse(all.Split('|')[4], CultureInfo.InvariantCulture);
    }
}
