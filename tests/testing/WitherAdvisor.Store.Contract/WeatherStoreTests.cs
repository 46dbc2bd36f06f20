using WitherAdvisor.Loft.Kept;
using WitherAdvisor.Readings;
using WitherAdvisor.Readings.Sources;
using static WitherAdvisor.Store.Contract.Invented;

namespace WitherAdvisor.Store.Contract;

/// <summary>Weather that people and callers tell.</summary>
public abstract class WeatherStoreTests<TStore> : StoreSuite<TStore>
    where TStore : IStoreUnderTest, new()
{
    private static readonly DateTimeOffset SavedAt = Monday.AddDays(1);
    protected override Task Prepare() => Store.WithTrough();

    [Fact]
    public async Task Every_field_of_a_reading_comes_back()
    {
        var reading = Filled<WeatherReading>();

        Assert.Equal(1, await Save(reading));

        Assert.Equal([reading], await ReadAll());
    }

    [Fact]
    public async Task Unknown_values_stay_unknown_whichever_row_comes_first()
    {
        var nothing = new WeatherReading(Monday);
        var everything = Filled<WeatherReading>() with { Time = Monday.AddHours(1) };
        var nothingAgain = new WeatherReading(Monday.AddHours(2));

        await Save(nothing, everything, nothingAgain);

        Assert.Equal([nothing, everything, nothingAgain], await ReadAll());
    }

    [Fact]
    public async Task A_known_zero_is_not_unknown()
    {
        await Save(new WeatherReading(Monday, RainMm: 0));

        Assert.Equal(0, Assert.Single(await ReadAll()).RainMm);
    }

    [Fact]
    public async Task A_later_reading_replaces_value_by_value_where_it_is_known()
    {
        await Save(new WeatherReading(Monday, DryBulbC: 18, DewPointC: 15, RainMm: 2, WindMPerS: 3));

        Assert.Equal(0, await Save(new WeatherReading(Monday, DryBulbC: 19, RainMm: 0, StationPressurePa: 85_000)));

        Assert.Equal(
            [new WeatherReading(Monday, DryBulbC: 19, DewPointC: 15, RainMm: 0, WindMPerS: 3, StationPressurePa: 85_000)],
            await ReadAll());
    }

    [Fact]
    public async Task A_later_full_reading_replaces_every_value()
    {
        await Save(new WeatherReading(Monday, 1, 2, 3, 0.4, 5, 6, 7, 8));
        var later = Filled<WeatherReading>() with { Time = Monday };

        await Save(later);

        Assert.Equal([later], await ReadAll());
    }

    [Fact]
    public async Task An_empty_later_reading_erases_nothing()
    {
        var known = Filled<WeatherReading>();
        await Save(known);

        await Save(new WeatherReading(known.Time));

        Assert.Equal([known], await ReadAll());
    }

    [Fact]
    public async Task A_later_humidity_replaces_the_earlier_in_whichever_form_it_was_told()
    {
        await Save(new WeatherReading(Monday, DryBulbC: 20, DewPointC: 10, RelativeHumidity: 0.53));

        await Save(new WeatherReading(Monday, WetBulbC: 19));

        Assert.Equal([new WeatherReading(Monday, DryBulbC: 20, WetBulbC: 19)], await ReadAll());
    }

    [Fact]
    public async Task The_same_instant_told_with_another_offset_is_the_same_reading()
    {
        await Save(new WeatherReading(Monday, DryBulbC: 18));

        Assert.Equal(0, await Save(new WeatherReading(Monday.ToOffset(TimeSpan.FromHours(-5)), DryBulbC: 19)));

        var reading = Assert.Single(await ReadAll());
        Assert.Equal(Monday, reading.Time);
        Assert.Equal(TimeSpan.Zero, reading.Time.Offset);
        Assert.Equal(19, reading.DryBulbC);
    }

    [Fact]
    public async Task Only_new_times_are_counted_as_new()
    {
        await Save(new WeatherReading(Monday), new WeatherReading(Monday.AddHours(1)));

        Assert.Equal(1, await Save(
            new WeatherReading(Monday.AddHours(1)),
            new WeatherReading(Monday.AddHours(2)),
            new WeatherReading(Monday.AddHours(2), RainMm: 1)));
        Assert.Equal(0, await Save());
    }

    [Fact]
    public async Task An_hour_told_twice_in_one_list_is_merged_in_the_order_told()
    {
        await Save(
            new WeatherReading(Monday, DryBulbC: 18, RainMm: 2),
            new WeatherReading(Monday, DryBulbC: 19, WindMPerS: 1));

        Assert.Equal([new WeatherReading(Monday, DryBulbC: 19, RainMm: 2, WindMPerS: 1)], await ReadAll());
    }

    [Fact]
    public async Task Observed_and_forecast_of_the_same_hour_are_kept_apart()
    {
        var observed = new WeatherReading(Monday, DryBulbC: 18);
        var forecast = new WeatherReading(Monday, DryBulbC: 21);
        await Store.Weather.SaveReadings("hill", WeatherSource.Observed, [observed], SavedAt, Cancel);
        await Store.Weather.SaveReadings("hill", WeatherSource.CallerForecast, [forecast], SavedAt, Cancel);

        Assert.Equal([observed], await Read(WeatherSource.Observed, Monday, Monday));
        Assert.Equal([forecast], await Read(WeatherSource.CallerForecast, Monday, Monday));
    }

    [Fact]
    public async Task A_stretch_holds_both_its_ends_and_comes_in_order_of_time()
    {
        await Save([.. new[] { 5, 3, 1, 4, 2 }.Select(hour => new WeatherReading(Monday.AddHours(hour)))]);

        var read = await Read(WeatherSource.Observed, Monday.AddHours(2).ToOffset(TimeSpan.FromHours(9)), Monday.AddHours(4));

        Assert.Equal([2, 3, 4], read.Select(reading => (reading.Time - Monday).TotalHours));
    }

    [Fact]
    public async Task The_first_and_the_last_instant_there_are_can_be_kept()
    {
        await Save(new WeatherReading(DateTimeOffset.MinValue), new WeatherReading(DateTimeOffset.MaxValue));

        var read = await ReadAll();

        Assert.Equal(DateTimeOffset.MinValue, read[0].Time);
        Assert.Equal(DateTimeOffset.MaxValue.ToUnixTimeMilliseconds(), read[1].Time.ToUnixTimeMilliseconds());
    }

    [Fact]
    public async Task A_reading_that_cannot_be_kept_takes_the_whole_list_with_it()
    {
        await Save(new WeatherReading(Monday, DryBulbC: 18));

        await Assert.ThrowsAnyAsync<Exception>(() => Save(
            new WeatherReading(Monday, DryBulbC: 25),
            new WeatherReading(Monday.AddHours(1)),
            new WeatherReading(Monday.AddHours(2), DryBulbC: double.NaN)));

        Assert.Equal([new WeatherReading(Monday, DryBulbC: 18)], await ReadAll());
    }

    [Fact]
    public async Task Weather_of_an_unknown_site_is_refused_by_name()
    {
        var readings = await Assert.ThrowsAsync<ParentNotFoundException>(() => Store.Weather.SaveReadings(
            "nowhere", WeatherSource.Observed, [new WeatherReading(Monday)], SavedAt, Cancel));
        var totals = await Assert.ThrowsAsync<ParentNotFoundException>(() => Store.Weather.SaveRainTotals(
            "nowhere", [new RainTotal(Monday, Monday.AddDays(1), 1)], SavedAt, Cancel));

        Assert.Contains("'nowhere'", readings.Message, StringComparison.Ordinal);
        Assert.Contains("'nowhere'", totals.Message, StringComparison.Ordinal);
        Assert.Empty(await Store.Weather.ReadSourced("nowhere", DateTimeOffset.MinValue, DateTimeOffset.MaxValue, Cancel));
        Assert.Empty(await Store.Weather.ReadRainTotals("nowhere", DateTimeOffset.MinValue, DateTimeOffset.MaxValue, Cancel));
    }

    [Fact]
    public async Task A_rain_total_comes_back_and_a_later_one_of_the_same_stretch_replaces_it()
    {
        var first = new RainTotal(Monday, Monday.AddDays(1), 12.7);
        var other = new RainTotal(Monday, Monday.AddDays(2), 20);
        await Store.Weather.SaveRainTotals("hill", [first, other], SavedAt, Cancel);

        await Store.Weather.SaveRainTotals("hill", [first with { RainMm = 0.1 + 0.2 }], SavedAt.AddHours(1), Cancel);

        Assert.Equal([first with { RainMm = 0.1 + 0.2 }, other], await RainTotals(Monday, Monday.AddDays(1)));
    }

    [Fact]
    public async Task A_rain_total_that_cannot_be_kept_takes_the_whole_list_with_it()
    {
        await Assert.ThrowsAnyAsync<Exception>(() => Store.Weather.SaveRainTotals(
            "hill",
            [new RainTotal(Monday, Monday.AddDays(1), 1), new RainTotal(Monday.AddDays(1), Monday.AddDays(2), double.NaN)],
            SavedAt,
            Cancel));

        Assert.Empty(await RainTotals(DateTimeOffset.MinValue, DateTimeOffset.MaxValue));
    }

    [Theory]
    [InlineData(-3, -1, false)]
    [InlineData(-3, 0, false)] // a total excludes its start
    [InlineData(-3, 1, true)]
    [InlineData(5, 7, true)]
    [InlineData(-3, 30, true)]
    [InlineData(24, 30, true)] // and includes its end
    [InlineData(25, 30, false)]
    public async Task Totals_that_touch_the_stretch_are_read(int fromHour, int toHour, bool touches)
    {
        await Store.Weather.SaveRainTotals("hill", [new RainTotal(Monday, Monday.AddHours(24), 5)], SavedAt, Cancel);

        Assert.Equal(touches, (await RainTotals(Monday.AddHours(fromHour), Monday.AddHours(toHour))).Count == 1);
    }

    private Task<int> Save(params WeatherReading[] readings) =>
        Store.Weather.SaveReadings("hill", WeatherSource.Observed, readings, SavedAt, Cancel);

    private Task<IReadOnlyList<WeatherReading>> ReadAll() =>
        Read(WeatherSource.Observed, DateTimeOffset.MinValue, DateTimeOffset.MaxValue);

    private async Task<IReadOnlyList<WeatherReading>> Read(WeatherSource source, DateTimeOffset from, DateTimeOffset to) =>
    [
        .. (await Store.Weather.ReadSourced("hill", from, to, Cancel))
            .Where(reading => reading.Source == source).Select(reading => reading.Reading),
    ];

    private Task<IReadOnlyList<RainTotal>> RainTotals(DateTimeOffset from, DateTimeOffset to) =>
        Store.Weather.ReadRainTotals("hill", from, to, Cancel);
}
