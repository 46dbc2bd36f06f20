using System.Globalization;
using WitherAdvisor.Readings;
using WitherAdvisor.Readings.Sources;
using WitherAdvisor.Sites;
using WitherAdvisor.Spells;
using WitherAdvisor.Review;
using Xunit;

namespace WitherAdvisor.Tests.Review;

/// <summary>
/// Four real years (fixtures/seattle/README.md) through the public review, month by month. Days become hours: the
/// temperature swings between its extremes, the dew point is the lowest temperature (FAO-56, eq. 48), and rain is a
/// gauge's total of the day, so that its hours are not known. Plausibility, not accuracy.
/// </summary>
public sealed class SeattleYearsTests
{
    private const double WarmestHour = 15;

    private static readonly TimeSpan Offset = TimeSpan.FromHours(-8);
    private static readonly Site Seattle = new(120, 47.4, -122.3, Site.UsualHotAirC, WitherStyle.Short);
    private static readonly Lazy<IReadOnlyList<Month>> Months = new(Review);

    [Fact]
    public void Spells_and_waters_of_four_years_stand_in_a_table_with_the_reason_of_each_threshold()
    {
        ITestOutputHelper output = TestContext.Current.TestOutputHelper!;
        foreach (string row in ThresholdReasons.Rows(new SpellThresholds()))
        {
            output.WriteLine(row);
        }

        output.WriteLine("month     rain mm  ET0 mm/d  wet d  dry windy d  ordinary d  leaf at 8 h  soil short mm  K_s");
        foreach (Month month in Months.Value)
        {
            output.WriteLine(string.Create(CultureInfo.InvariantCulture,
                $"{month.First:yyyy-MM}   {month.RainMm,7:F0}  {month.ReferenceMm,8:F1}  {month.Share(SpellKind.Wet) * 30,5:F0}  {month.Share(SpellKind.DryWindy) * 30,11:F0}  {month.Share(SpellKind.Ordinary) * 30,10:F0}  {month.MorningWaterKgPerKg,11:F3}  {month.DepletionMm,13:F0}  {month.Stress:F2}"));
        }

        Assert.Equal(45, Months.Value.Count);
        Assert.All(Months.Value.SelectMany(month => month.Review.Hours), hour => Assert.InRange(hour.SurfaceWaterKgPerKg.Value!.Value, 0, 0.35));
        Assert.All(Months.Value.SelectMany(month => month.Review.Days), day => Assert.InRange(day.DepletionMm.Value!.Value, 0, 170));
    }

    [Theory]
    [InlineData(2012)]
    [InlineData(2013)]
    [InlineData(2014)]
    [InlineData(2015)]
    public void Wet_winters_and_dry_summers_are_told_apart_by_the_share_of_days_in_a_wet_spell(int year)
    {
        double winter = Mean(year, month => month.Share(SpellKind.Wet), 11, 12, 1, 2);
        double summer = Mean(year, month => month.Share(SpellKind.Wet), 7, 8);

        Assert.True(winter > 0.5, $"November to February {year}: {winter:F2}");
        Assert.True(summer < 0.2, $"July and August {year}: {summer:F2}");
    }

    [Theory]
    [InlineData(2012)]
    [InlineData(2013)]
    [InlineData(2014)]
    [InlineData(2015)]
    public void Leaf_and_soil_are_wetter_in_winter_than_in_summer(int year)
    {
        Assert.True(Mean(year, month => month.MorningWaterKgPerKg, 11, 12) > 2 * Mean(year, month => month.MorningWaterKgPerKg, 7, 8));
        Assert.True(Mean(year, month => month.Stress, 11, 12) > 0.95);
        Assert.True(Mean(year, month => month.Stress, 8, 9) < 0.75);
        Assert.True(Mean(year, month => month.DepletionMm, 8, 9) > 80);
    }

    [Fact]
    public void A_dry_windy_spell_is_only_found_where_the_soil_is_dry()
    {
        ReviewDay[] windy = [.. Months.Value.SelectMany(month => month.Review.Days).Where(day => day.Spell.Kind == SpellKind.DryWindy)];

        Assert.NotEmpty(windy);
        Assert.All(windy, day =>
        {
            Assert.InRange(day.From.ToOffset(Offset).Month, 5, 10);
            Assert.True(day.WaterStress.Value <= new SpellThresholds().DryEndsAboveStress);
        });
    }

    [Fact]
    public void Every_day_in_a_spell_bears_the_number_that_its_rule_asks_for()
    {
        SpellThresholds held = new();
        Assert.All(Months.Value.SelectMany(month => month.Review.Days), day => Assert.True(day.Spell switch
        {
            { Reason: SpellReason.RainIn72Hours, Spell.RainLast72HoursMm: { } rainMm } => rainMm >= held.WetRainIn72HoursMm,
            { Reason: SpellReason.RainIn72HoursStill, Spell.RainLast72HoursMm: { } rainMm } => rainMm >= held.WetEndsBelowRainIn72HoursMm,
            { Reason: SpellReason.RainOnLeaf } leaf => leaf.RainOnLeafKgPerKg >= held.WetLeafKgPerKg,
            { Reason: SpellReason.RainOnLeafStill } leaf => leaf.RainOnLeafKgPerKg >= held.WetEndsBelowLeafKgPerKg,
            { Reason: SpellReason.DroughtAndWind, Spell: var dry } => dry.WaterStress < held.DryStressBelow && dry.DryingPowerKPaMPerS >= dry.DryingPowerThresholdKPaMPerS,
            { Reason: SpellReason.DroughtAndWindStill, Spell: var dry } => dry.WaterStress <= held.DryEndsAboveStress,
            { Reason: SpellReason.NoThresholdReached, Spell: var none } => none.RainLast72HoursMm < held.WetRainIn72HoursMm,
            _ => false,
        }));
    }

    private static double Mean(int year, Func<Month, double> of, params int[] months) =>
        Months.Value.Where(month => month.First.Year == year && months.Contains(month.First.Month)).Average(of);

    private static List<Month> Review()
    {
        IReadOnlyList<ReferenceRow> days = ReferenceRow.ReadAll("seattle/seattle-weather.csv");
        DateTimeOffset firstDay = Midnight(days[0]);
        RainTotal[] totals = [.. days.Select(day => new RainTotal(Midnight(day), Midnight(day).AddDays(1), day.Number("precipitation")))];
        ComposedWeather weather = WeatherComposition.Of(
            [.. days.SelectMany((day, at) => Hours(days[Math.Max(at - 1, 0)], day)).Select(reading => new SourcedReading(reading, WeatherSource.Observed, null, firstDay))], totals);
        List<Month> months = [];
        // The soil wants a season before the first month that is looked at.
        for (DateTimeOffset first = firstDay.AddMonths(3); first < firstDay.AddYears(4); first = first.AddMonths(1))
        {
            months.Add(Of(first, weather));
        }

        return months;
    }

    private static Month Of(DateTimeOffset first, ComposedWeather weather)
    {
        DateTimeOffset end = first.AddMonths(1);
        DateTimeOffset from = end.AddDays(-120);
        ComposedWeather near = new(
            [.. weather.Readings.Where(reading => reading.Best.Time >= from && reading.Best.Time <= end)],
            [.. weather.RainTotals.Where(total => total.From >= from && total.To <= end)],
            []);
        ReviewSpan span = new(end, end, (int)(end - first).TotalDays - 1, AheadH: 0);
        return new(first, WeatherReview.Of(Seattle, near, span, new()));
    }

    /// <summary>From the coldest hour up to the warmest and down again.</summary>
    private static IEnumerable<WeatherReading> Hours(ReferenceRow before, ReferenceRow day)
    {
        double high = day.Number("temp_max");
        double low = day.Number("temp_min");
        return Enumerable.Range(1, 24).Select(hour => new WeatherReading(
            Midnight(day).AddHours(hour),
            (high + low) / 2 + (high - low) / 2 * Math.Cos((hour - WarmestHour) * Math.PI / 12),
            DewPointC: hour <= 3 ? Math.Min(low, before.Number("temp_min")) : low,
            WindMPerS: day.Number("wind")));
    }

    private static DateTimeOffset Midnight(ReferenceRow day) =>
        new(DateTime.ParseExact(day.Text("date"), "yyyy-MM-dd", CultureInfo.InvariantCulture), Offset);

    /// <summary>A month as reviewed at its end.</summary>
    private sealed record Month(DateTimeOffset First, WeatherReview Review)
    {
        public double RainMm => Review.Days.Sum(day => day.RainMm.Value!.Value);

        public double ReferenceMm => Review.Days.Average(day => day.ReferenceMm.Value!.Value);

        public double DepletionMm => Review.Days.Average(day => day.DepletionMm.Value!.Value);

        public double Stress => Review.Days.Average(day => day.WaterStress.Value!.Value);

        public double MorningWaterKgPerKg => Review.Hours.Where(hour => hour.Time.ToOffset(Offset).Hour == 8).Average(hour => hour.SurfaceWaterKgPerKg.Value!.Value);

        public double Share(SpellKind kind) => Review.Days.Count(day => day.Spell.Kind == kind) / (double)Review.Days.Count;
    }
}
