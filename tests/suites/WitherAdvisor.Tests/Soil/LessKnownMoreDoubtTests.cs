using WitherAdvisor.Coefficients;
using WitherAdvisor.LeafAtLoading;
using WitherAdvisor.Readings;
using WitherAdvisor.Spells;
using WitherAdvisor.Tests.LeafAtLoading;
using Xunit;

namespace WitherAdvisor.Tests.Soil;

/// <summary>K_s of a drying field, with parts of its weather withheld: never surer for it.</summary>
public sealed class LessKnownMoreDoubtTests
{
    private static readonly InventedDays Drying = InventedDays.Ordinary with { Light = 0.7, SwingK = 3.5 };

    /// <summary>Another K_s has another error too: where the guess is as good as the reading they differ by so little.</summary>
    private const double Rounding = 0.005;

    public static TheoryData<string> Parts() => ["sun", "wind", "sun and wind", "humidity", "all but temperature"];

    [Theory]
    [MemberData(nameof(Parts))]
    public void Withholding_a_part_makes_the_soil_no_surer(string part)
    {
        Spell all = Estimate(reading => reading).Spell;
        Spell less = Estimate(reading => Without(part, reading)).Spell;

        Assert.True(
            less.WaterStressStandardDeviation >= all.WaterStressStandardDeviation - Rounding,
            $"{all.WaterStress:F2} ± {all.WaterStressStandardDeviation:F3} became {less.WaterStress:F2} ± {less.WaterStressStandardDeviation:F3}");
        Assert.InRange(Math.Abs(less.WaterStress!.Value - all.WaterStress!.Value), 0, 2 * less.WaterStressStandardDeviation!.Value);
    }

    [Fact]
    public void Many_days_do_not_average_a_lasting_error_away()
    {
        double Error(int days) => LeafFromWeather.Estimate(
            InventedDays.Site, [.. Drying.Hours(days, hour => hour % 72 == 0 ? 6 : 0).Select(reading => Without("sun and wind", reading))], [],
            InventedDays.Plucked(8, 10), new WitherCoefficients()).Spell.WaterStressStandardDeviation!.Value;

        Assert.True(Error(110) > 0.05, $"{Error(110)}");
    }

    private static WeatherReading Without(string part, WeatherReading reading) => part switch
    {
        "sun" => reading with { ShortwaveWPerM2 = null },
        "wind" => reading with { WindMPerS = null },
        "sun and wind" => reading with { ShortwaveWPerM2 = null, WindMPerS = null },
        "humidity" => reading with { DewPointC = null },
        _ => reading with { ShortwaveWPerM2 = null, WindMPerS = null, DewPointC = null },
    };

    private static LeafEstimate Estimate(Func<WeatherReading, WeatherReading> seen) => LeafFromWeather.Estimate(
        InventedDays.Site, [.. Drying.Hours(62, hour => hour % 72 == 0 ? 6 : 0).Select(seen)], [], InventedDays.Plucked(8, 10), new WitherCoefficients());
}
