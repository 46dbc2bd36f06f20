using WitherAdvisor.Coefficients;
using WitherAdvisor.Leaf;
using WitherAdvisor.LeafAtLoading;
using WitherAdvisor.Readings;
using WitherAdvisor.Readings.Sources;
using WitherAdvisor.Tests.LeafAtLoading;
using Xunit;

namespace WitherAdvisor.Tests.Readings.Sources;

/// <summary>A gauge that is read once a day says how much rain fell; the feed says when.</summary>
public sealed class RainPatternTests
{
    private static readonly DateTimeOffset Emptied = InventedDays.At(-17);

    [Fact]
    public void A_gauges_day_takes_its_pattern_from_the_feed_by_the_quarter()
    {
        RainTotal day = Total(24);

        Assert.Equal([0, 6, 0.5, 0], Pattern(day, Fed(24, hour => hour is > 6 and <= 12 ? 1 : hour == 13 ? 0.5 : 0))!);
        Assert.Equal(day, Composed(day, Fed(24, _ => 1)) with { PatternMm = null });
    }

    [Theory]
    [InlineData(12, 2)]
    [InlineData(12.5, 3)] // no part longer than a quarter of a day
    [InlineData(72, 12)]
    [InlineData(2208, 368)]
    public void Parts_are_equal_and_last_six_hours_at_most(double hours, int parts)
    {
        IReadOnlyList<double> pattern = Pattern(Total(hours), Fed((int)hours + 1, _ => 1))!;

        Assert.Equal(parts, pattern.Count);
        Assert.All(pattern, mm => Assert.Equal(hours / parts, mm, 1e-6));
    }

    [Theory]
    [InlineData(6)] // one part says nothing of when
    [InlineData(2209)] // a season's sum
    [InlineData(0)]
    [InlineData(-24)]
    public void Other_stretches_have_none(double hours) => Assert.Null(Pattern(Total(hours), Fed(2300, _ => 1)));

    [Fact]
    public void A_part_that_the_feed_tells_half_of_counts_as_if_it_told_all()
    {
        Assert.Equal([6, 6], Pattern(Total(12), Fed(9, _ => 1))!);
        Assert.Null(Pattern(Total(12), Fed(8, _ => 1)));
    }

    [Fact]
    public void Hours_that_reach_over_the_end_of_a_part_count_by_their_share()
    {
        RainTotal total = new(Emptied.AddMinutes(30), Emptied.AddMinutes(30 + 720), 5);

        // The hours 0 to 1, 6 to 7 and 12 to 13 lie half in a part, and the second of them half in each.
        Assert.Equal([2, 2], Pattern(total, Fed(13, hour => hour is 1 or 7 or 13 ? 2 : 0))!);
        Assert.Equal([1, 3], Pattern(total, Fed(13, hour => hour is 7 or 9 ? 2 : 0))!);
    }

    [Fact]
    public void An_analysis_counts_before_what_was_forecast_and_the_newest_of_either()
    {
        IEnumerable<SourcedReading> rows =
        [
            .. Fed(12, _ => 3, WeatherSource.FeedForecast), .. Fed(12, _ => 5, savedAfterH: -1), .. Fed(12, _ => 1), .. Fed(12, _ => 4, savedAfterH: -2),
        ];

        Assert.Equal([6, 6], Pattern(Total(12), rows)!);
        Assert.Equal([18, 18], Pattern(Total(12), Fed(12, _ => 3, WeatherSource.CallerForecast))!);
    }

    [Fact]
    public void What_was_read_by_the_hour_is_no_pattern() => Assert.Null(Pattern(Total(12), Fed(12, _ => 1, WeatherSource.Observed)));

    [Fact]
    public void Readings_without_rain_tell_of_no_hour() => Assert.Null(Pattern(Total(12), Fed(12, hour => hour > 4 ? 1 : null)));

    [Fact]
    public void The_gauges_rain_of_last_night_has_dried_off_by_noon_and_that_of_the_morning_has_not()
    {
        double dried = WaterOnLeaf(hour => hour <= 6 ? 3 : 0);
        double even = WaterOnLeaf(_ => null);
        double wet = WaterOnLeaf(hour => hour > 18 ? 3 : 0);

        Assert.True(dried < 0.3 * even, $"{dried} {even}");
        Assert.True(wet >= even, $"{wet} {even}");
    }

    [Fact]
    public void The_estimate_says_whether_a_feed_told_of_the_hours()
    {
        static Assumption.RainHoursUnknown Said(Func<int, double?> fedMm) => Leaf(fedMm).Missing.OfType<Assumption.RainHoursUnknown>().Single();

        Assert.True(Said(_ => 1).LaidByFeed);
        Assert.False(Said(_ => null).LaidByFeed);
    }

    /// <summary>Water on leaf plucked at 10 to 12 h, kg/kg, after 18 mm in a gauge that was emptied at 7 h of the day before and read at 7 h.</summary>
    private static double WaterOnLeaf(Func<int, double?> fedMm) => Leaf(fedMm).SurfaceWaterKgPerKg.Value;

    private static LeafEstimate Leaf(Func<int, double?> fedMm)
    {
        ComposedWeather weather = WeatherComposition.Of(
            [.. InventedDays.Ordinary.Between(-480, 12, hour => hour is > -17 and <= 7 ? null : 0).Select(Observed), .. Fed(24, fedMm)],
            [new(Emptied, Emptied.AddHours(24), 18)]);
        return LeafFromWeather.Estimate(
            InventedDays.Site, weather.Weather, weather.RainTotals, InventedDays.Plucked(10, 12), new WitherCoefficients());
    }

    private static IReadOnlyList<double>? Pattern(RainTotal total, IEnumerable<SourcedReading> rows) => Composed(total, rows).PatternMm;

    private static RainTotal Composed(RainTotal total, IEnumerable<SourcedReading> rows) =>
        Assert.Single(WeatherComposition.Of([.. rows], [total]).RainTotals);

    private static RainTotal Total(double hours) => new(Emptied, Emptied.AddHours(hours), 18);

    /// <summary>Hours from when the gauge was emptied, told by a feed; the hour that ends after the first is 1.</summary>
    private static IEnumerable<SourcedReading> Fed(
        int hours, Func<int, double?> rainMm, WeatherSource source = WeatherSource.FeedAnalysis, double savedAfterH = 0) =>
        Enumerable.Range(1, hours).Select(hour => new SourcedReading(
            new(Emptied.AddHours(hour), RainMm: rainMm(hour)), source, "valley-feed", InventedDays.At(savedAfterH)));

    private static SourcedReading Observed(WeatherReading reading) => new(reading, WeatherSource.Observed, null, InventedDays.At(0));
}
