using System.Globalization;
using WitherAdvisor.Readings;
using WitherAdvisor.Readings.Sources;
using WitherAdvisor.Sites;
using WitherAdvisor.Spells;
using WitherAdvisor.Review;
using Xunit;

namespace WitherAdvisor.Tests.Review;

/// <summary>
/// One real day at twenty stations, with its dirt and holes (fixtures/airways/README.md), through the public review. The
/// reports hold no amounts of rain, so rain is unknown unless a gauge tells it: three gauges, all of thirty days, are
/// invented to see what each makes of the same air.
/// </summary>
public sealed class AirwaysDayTests
{
    private const int GaugedDays = 30;
    private static readonly DateTimeOffset Now = new(1995, 3, 18, 23, 50, 0, TimeSpan.Zero);
    private static readonly DateTimeOffset DayEnd = new(1995, 3, 19, 0, 0, 0, TimeSpan.Zero);

    public static TheoryData<string> Stations => [.. Rows().Select(row => row.Text("station")).Distinct()];

    [Fact]
    public void Spells_and_waters_of_the_stations_stand_in_a_table_with_the_reason_of_each_threshold()
    {
        ITestOutputHelper output = TestContext.Current.TestOutputHelper!;
        foreach (string row in ThresholdReasons.Rows(new SpellThresholds()))
        {
            output.WriteLine(row);
        }

        output.WriteLine("station  reports  air unread h  dry bulb C     drying  unread gauge / dry gauge / wet gauge: spell, leaf kg/kg, soil short mm");
        foreach (string station in Stations)
        {
            ReferenceRow[] reports = Reports(station);
            WeatherReview[] reviews = [Review(reports, null), Review(reports, 0), Review(reports, 25)];
            double[] dry = [.. reviews[0].Hours.Select(hour => hour.DryBulbC.Value).OfType<double>()];
            int unread = reviews[0].Hours.Count(hour => hour.Time > Now.AddHours(-24) && hour.DryBulbC.Value is null);
            output.WriteLine(string.Create(CultureInfo.InvariantCulture,
                $"{station,-7}  {reports.Length,7}  {unread,12}  {dry.Min(),5:F1} to {dry.Max(),5:F1}  {Today(reviews[1]).DryingPowerKPaMPerS.Value,6:F1}  {string.Join(" / ", reviews.Select(Told))}"));
            Assert.NotEmpty(dry);
        }
    }

    [Theory]
    [MemberData(nameof(Stations))]
    public void Rain_that_nobody_read_makes_no_dry_weather(string station)
    {
        WeatherReview review = Review(Reports(station), null);

        Assert.Null(Today(review).Spell.Kind);
        Assert.Null(Today(review).RainMm.Value);
        Assert.Null(Today(review).DepletionMm.Value);
        Assert.All(review.Hours, hour => Assert.Null(hour.SurfaceWaterKgPerKg.Value));
        Assert.Contains(review.Holes, hole => hole.Quantity == WeatherQuantity.Rain && hole.Instead == ValueStanding.Unknown);
        Assert.Contains(review.Wanted, wanted => wanted.Kind == WantedKind.Rain);
    }

    [Theory]
    [MemberData(nameof(Stations))]
    public void Days_of_rain_and_a_month_without_are_told_apart_in_the_same_air(string station)
    {
        ReviewDay wet = Today(Review(Reports(station), 25));
        ReviewDay dry = Today(Review(Reports(station), 0));

        Assert.Equal(SpellKind.Wet, wet.Spell.Kind);
        Assert.NotEqual(SpellKind.Wet, dry.Spell.Kind);
        Assert.InRange(wet.DepletionMm.Value!.Value, 0, 20);
        Assert.True(dry.DepletionMm.Value > wet.DepletionMm.Value + 20);
        Assert.True(wet.Spell.RainOnLeafKgPerKg > 0.02 && dry.Spell.RainOnLeafKgPerKg == 0);
    }

    [Theory]
    [MemberData(nameof(Stations))]
    public void Air_is_what_the_reports_say_and_between_them_is_told_as_filled_or_unknown(string station)
    {
        ReferenceRow[] reports = Reports(station);
        double low = reports.Min(report => report.Number("temp_c"));
        double high = reports.Max(report => report.Number("temp_c"));
        ReviewHour[] today = [.. Review(reports, null).Hours.Where(hour => hour.Time > Now.AddHours(-24))];

        Assert.All(today.Where(hour => hour.DryBulbC.Value is not null), hour =>
        {
            Assert.InRange(hour.DryBulbC.Value!.Value, low, high);
            Assert.InRange(hour.HygrometricDifferenceK.Value!.Value, 0, hour.DryBulbC.Value!.Value - hour.DewPointC.Value!.Value + 0.001);
        });
        int read = today.Count(hour => hour.DryBulbC.Standing == ValueStanding.Observed);
        Assert.True(read <= reports.Length && read >= reports.Length / 2, $"{read} hours read of {reports.Length} reports");
        Assert.Contains(today, hour => hour.DryBulbC.Standing == ValueStanding.Observed);
    }

    private static ReviewDay Today(WeatherReview review) => Assert.Single(review.Days, day => day.To == DayEnd);

    private static string Told(WeatherReview review) => string.Create(CultureInfo.InvariantCulture,
        $"{Today(review).Spell.Kind?.ToString() ?? "not known"} ({Today(review).Spell.Reason}), {review.Hours[^1].SurfaceWaterKgPerKg.Value?.ToString("F2") ?? "?"}, {Today(review).DepletionMm.Value?.ToString("F0") ?? "?"}");

    private static WeatherReview Review(ReferenceRow[] reports, double? gaugedMmADay)
    {
        Site site = new(reports[0].Number("elev_m"), reports[0].Number("lat"), reports[0].Number("lon"), Site.UsualHotAirC, WitherStyle.Short);
        RainTotal[] totals = gaugedMmADay is { } millimetres
            ? [.. Enumerable.Range(0, GaugedDays).Select(day => new RainTotal(DayEnd.AddDays(-1 - day), DayEnd.AddDays(-day), millimetres))]
            : [];
        ComposedWeather weather = WeatherComposition.Of([.. reports.Select(Reading)], totals);
        return WeatherReview.Of(site, weather, new(Now, DayEnd, AheadH: 0), new());
    }

    private static SourcedReading Reading(ReferenceRow report) => new(
        new(
            DateTimeOffset.Parse(report.Text("time_utc") + "Z", CultureInfo.InvariantCulture),
            report.Number("temp_c"), report.Number("dewpoint_c"), WindMPerS: report.Number("wind_ms")),
        WeatherSource.Observed, null, Now);

    private static ReferenceRow[] Reports(string station) => [.. Rows().Where(row => row.Text("station") == station)];

    /// <summary>A station that reports no place cannot be worked with.</summary>
    private static IEnumerable<ReferenceRow> Rows() =>
        ReferenceRow.ReadAll("airways/reports-1995-03-18.csv").Where(row => row.Text("elev_m").Length > 0);
}
