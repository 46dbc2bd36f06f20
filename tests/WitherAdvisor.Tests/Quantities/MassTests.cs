using WitherAdvisor.Quantities;
using Xunit;

namespace WitherAdvisor.Tests.Quantities;

public sealed class MassTests
{
    // NIST SP 811 (2008), appendix B.9: 1 lb = 0.453 592 37 kg, exactly; 1 ton of 2 240 lb = 1 016.046 908 8 kg.
    [Theory]
    [InlineData(1, 0.45359237)]
    [InlineData(100, 45.359237)]
    [InlineData(2240, 1016.0469088)]
    public void A_pound_is_what_the_agreement_says(double pounds, double kilograms)
    {
        Assert.Equal(kilograms, Mass.FromPounds(pounds).Kilograms, 12);
        Assert.Equal(pounds, Mass.FromKilograms(kilograms).Pounds, 9);
    }

    [Fact]
    public void Every_tenth_of_a_pound_comes_back_as_it_was_typed()
    {
        for (int tenths = 0; tenths <= 100_000; tenths += 7)
        {
            double typed = tenths / 10.0;
            Assert.Equal(typed, Math.Round(Mass.FromKilograms(Mass.FromPounds(typed).Kilograms).Pounds, 9));
        }
    }

    [Theory]
    [InlineData(-0.1)]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    public void No_mass_is_below_nothing_or_endless(double kilograms) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Mass.FromKilograms(kilograms));
}
