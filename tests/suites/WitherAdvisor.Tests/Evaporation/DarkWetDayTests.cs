using WitherAdvisor.Evaporation;
using WitherAdvisor.Readings.Sources;
using WitherAdvisor.Review;
using WitherAdvisor.Tests.LeafAtLoading;
using Xunit;

namespace WitherAdvisor.Tests.Evaporation;

/// <summary>
/// R_s/R_so is held within 0.3 and 1 and the cloud term f_cd = 1.35 R_s/R_so − 0.35 so within 0.05 and 1, as ASCE-EWRI
/// (2005), The ASCE standardized reference evapotranspiration equation, has it (eq. 18, from memory). FAO-56 states the
/// upper bound alone, and on dark wet days its equation 39 turns round.
/// </summary>
public sealed class DarkWetDayTests
{
    private const double LeastCloudTerm = 0.05;

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(5)]
    [InlineData(20)]
    [InlineData(35)]
    public void The_cloud_term_keeps_within_its_published_bounds_however_dark_the_day(double sunlight)
    {
        double clear = NetRadiation.LongwaveOfDay(15, 12, 1.5, NetRadiation.Clearness(30, 30));
        double term = NetRadiation.LongwaveOfDay(15, 12, 1.5, NetRadiation.Clearness(sunlight, 30)) / clear;

        Assert.InRange(term, LeastCloudTerm, 1);
    }

    [Fact]
    public void Without_the_bound_a_dark_day_would_have_missed_by_a_third_of_a_millimetre()
    {
        // 20 and 16 °C, saturated at the lowest, 1 m/s, R_s 1.5 of R_so 25 MJ/m², sea level: the term unbounded is −0.27.
        double vapour = FaoAir.SaturationKPa(16);
        double bounded = DayMm(vapour, NetRadiation.Clearness(1.5, 25));
        double plain = DayMm(vapour, 1.5 / 25);

        Assert.InRange(plain - bounded, 0.2, 0.5);
        Assert.True(bounded > 0);
    }

    [Fact]
    public void Days_of_dark_rain_give_off_little_and_never_less_than_nothing_in_the_review()
    {
        InventedDays dark = InventedDays.Wet with { Light = 0.03 };
        ComposedWeather weather = WeatherComposition.Of(
            [.. dark.Hours(20, hour => 1 + 0.1 * (hour & 1)).Select(reading => new SourcedReading(reading, WeatherSource.Observed, null, reading.Time))], []);

        WeatherReview review = WeatherReview.Of(InventedDays.Site, weather, new(InventedDays.At(24), InventedDays.LastMidnight, AheadH: 0), new());

        Assert.All(review.Days, day =>
        {
            Assert.InRange(day.ReferenceMm.Value!.Value, 0, 0.6);
            Assert.InRange(day.DepletionMm.Value!.Value, 0, 1);
        });
    }

    private static double DayMm(double vapourKPa, double clearness) => ReferenceEvapotranspiration.OfDayMm(
        20, 16, vapourKPa, 1, NetRadiation.Shortwave(1.5) - NetRadiation.LongwaveOfDay(20, 16, vapourKPa, clearness), FaoAir.PressureKPa(0));
}
