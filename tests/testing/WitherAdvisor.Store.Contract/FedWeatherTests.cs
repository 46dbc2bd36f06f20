using WitherAdvisor.Loft.Kept;
using WitherAdvisor.Readings;
using WitherAdvisor.Readings.Sources;
using static WitherAdvisor.Store.Contract.Invented;

namespace WitherAdvisor.Store.Contract;

/// <summary>Weather of feeds beside what people and callers say.</summary>
public abstract class FedWeatherTests<TStore> : StoreSuite<TStore>
    where TStore : IStoreUnderTest, new()
{
    private static readonly DateTimeOffset FirstFetch = Monday.AddDays(1);
    private static readonly DateTimeOffset SecondFetch = FirstFetch.AddHours(1);
    protected override Task Prepare() => Store.WithTrough();

    [Fact]
    public async Task Every_field_comes_back_with_source_feed_and_time_of_fetching()
    {
        var analysed = Filled<WeatherReading>() with { Time = Monday };
        var forecast = Filled<WeatherReading>(start: 100) with { Time = Monday.AddHours(1) };

        await Store.Weather.SaveFromFeed("hill", "valley-feed", [analysed], [forecast], FirstFetch, Cancel);

        Assert.Equal(
            [
                new SourcedReading(analysed, WeatherSource.FeedAnalysis, "valley-feed", FirstFetch),
                new SourcedReading(forecast, WeatherSource.FeedForecast, "valley-feed", FirstFetch),
            ],
            await ReadAll());
    }

    [Fact]
    public async Task A_newer_answer_replaces_the_feeds_older_one_of_that_time_whole()
    {
        await Foretell(FirstFetch, new WeatherReading(Monday, DryBulbC: 18, DewPointC: 15, RainMm: 4));

        await Foretell(SecondFetch, new WeatherReading(Monday, DryBulbC: 19, DewPointC: 14));

        var row = Assert.Single(await ReadAll());
        Assert.Equal(new WeatherReading(Monday, DryBulbC: 19, DewPointC: 14), row.Reading);
        Assert.Equal(SecondFetch, row.SavedAt);
    }

    [Fact]
    public async Task A_newer_full_answer_replaces_every_value()
    {
        await Foretell(FirstFetch, new WeatherReading(Monday, 1, 2, 3, 0.4, 5, 6, 7, 8));
        var later = Filled<WeatherReading>() with { Time = Monday };

        await Foretell(SecondFetch, later);

        Assert.Equal(later, Assert.Single(await ReadAll()).Reading);
    }

    [Fact]
    public async Task An_answer_that_comes_in_late_changes_nothing()
    {
        await Foretell(SecondFetch, new WeatherReading(Monday, RainMm: 0));

        await Foretell(FirstFetch, new WeatherReading(Monday, RainMm: 4));

        Assert.Equal(new(new(Monday, RainMm: 0), WeatherSource.FeedForecast, "valley-feed", SecondFetch), Assert.Single(await ReadAll()));
    }

    [Fact]
    public async Task An_hour_that_the_newer_answer_tells_nothing_of_keeps_what_is_known()
    {
        await Foretell(FirstFetch, new WeatherReading(Monday, RainMm: 4), new WeatherReading(Monday.AddHours(1), RainMm: 5));

        await Foretell(SecondFetch, new WeatherReading(Monday));

        Assert.Equal([4.0, 5.0], (await ReadAll()).Select(row => row.Reading.RainMm));
        Assert.All(await ReadAll(), row => Assert.Equal(FirstFetch, row.SavedAt));
    }

    [Fact]
    public async Task A_feed_never_overwrites_what_people_and_callers_said_nor_they_the_feed()
    {
        WeatherReading Saying(double dryBulbC) => new(Monday, DryBulbC: dryBulbC);
        await Store.Weather.SaveReadings("hill", WeatherSource.Observed, [Saying(1)], FirstFetch, Cancel);
        await Store.Weather.SaveReadings("hill", WeatherSource.CallerForecast, [Saying(2)], FirstFetch, Cancel);
        await Store.Weather.SaveFromFeed("hill", "valley-feed", [Saying(3)], [Saying(4)], SecondFetch, Cancel);
        await Store.Weather.SaveReadings("hill", WeatherSource.Observed, [Saying(5)], SecondFetch.AddHours(1), Cancel);

        Assert.Equal(
            [
                (WeatherSource.Observed, 5.0), (WeatherSource.FeedAnalysis, 3.0),
                (WeatherSource.CallerForecast, 2.0), (WeatherSource.FeedForecast, 4.0),
            ],
            (await ReadAll()).Select(row => (row.Source, row.Reading.DryBulbC!.Value)));
    }

    [Fact]
    public async Task Two_feeds_of_one_site_are_kept_apart()
    {
        await Foretell(FirstFetch, new WeatherReading(Monday, RainMm: 4));

        await Store.Weather.SaveFromFeed("hill", "other-feed", [], [new(Monday, RainMm: 0)], SecondFetch, Cancel);

        Assert.Equal([("other-feed", 0.0), ("valley-feed", 4.0)], (await ReadAll()).Select(row => (row.Feed, row.Reading.RainMm!.Value)));
    }

    [Fact]
    public async Task What_was_not_fed_names_no_feed()
    {
        await Store.Weather.SaveReadings("hill", WeatherSource.Observed, [new(Monday, RainMm: 1)], FirstFetch, Cancel);

        Assert.Equal(new(new(Monday, RainMm: 1), WeatherSource.Observed, null, FirstFetch), Assert.Single(await ReadAll()));
    }

    [Fact]
    public async Task An_answer_that_cannot_be_kept_is_left_whole()
    {
        await Foretell(FirstFetch, new WeatherReading(Monday, RainMm: 4));

        await Assert.ThrowsAnyAsync<Exception>(() => Store.Weather.SaveFromFeed(
            "hill", "valley-feed", [new(Monday.AddHours(-1), RainMm: 1)], [new(Monday, RainMm: double.NaN)], SecondFetch, Cancel));

        Assert.Equal(4.0, Assert.Single(await ReadAll()).Reading.RainMm);
    }

    [Fact]
    public async Task A_feed_brings_nothing_to_an_unknown_site()
    {
        var refusal = await Assert.ThrowsAsync<ParentNotFoundException>(() => Store.Weather.SaveFromFeed(
            "nowhere", "valley-feed", [new(Monday, RainMm: 1)], [], FirstFetch, Cancel));

        Assert.Contains("'nowhere'", refusal.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(WeatherSource.FeedAnalysis)]
    [InlineData(WeatherSource.FeedForecast)]
    public async Task Nobody_speaks_for_a_feed(WeatherSource source) =>
        await Assert.ThrowsAsync<ArgumentOutOfRangeException>(() => Store.Weather.SaveReadings(
            "hill", source, [new(Monday, RainMm: 1)], FirstFetch, Cancel));

    [Fact]
    public async Task A_feed_without_a_name_is_none() => await Assert.ThrowsAsync<ArgumentException>(
        () => Store.Weather.SaveFromFeed("hill", "", [new(Monday, RainMm: 1)], [], FirstFetch, Cancel));

    [Fact]
    public async Task A_stretch_of_all_sources_holds_both_its_ends_and_no_other_sites()
    {
        await Store.WithTrough("valley", "t1");
        WeatherReading[] hours = [.. Enumerable.Range(0, 6).Select(hour => new WeatherReading(Monday.AddHours(hour), RainMm: hour))];
        await Store.Weather.SaveFromFeed("hill", "valley-feed", hours[..3], hours[3..], FirstFetch, Cancel);
        await Store.Weather.SaveReadings("valley", WeatherSource.Observed, hours, FirstFetch, Cancel);

        var read = await Store.Weather.ReadSourced("hill", Monday.AddHours(2), Monday.AddHours(3), Cancel);

        Assert.Equal([WeatherSource.FeedAnalysis, WeatherSource.FeedForecast], read.Select(row => row.Source));
        Assert.Equal([2.0, 3.0], read.Select(row => row.Reading.RainMm));
    }

    [Fact]
    public async Task What_feeds_said_of_a_site_can_be_forgotten_and_nothing_else_is()
    {
        WeatherReading said = new(Monday, RainMm: 4);
        await Store.WithTrough("valley", "t1");
        foreach (string site in new[] { "hill", "valley" })
        {
            await Store.Weather.SaveReadings(site, WeatherSource.Observed, [said], FirstFetch, Cancel);
            await Store.Weather.SaveFromFeed(site, "valley-feed", [said], [said], FirstFetch, Cancel);
            await Store.Feeds.Add(new(site, "valley-feed", FirstFetch, null, 1, Monday, null, []), Cancel);
        }

        await Store.Weather.ForgetFeeds("hill", Cancel);

        Assert.Equal(WeatherSource.Observed, Assert.Single(await ReadAll()).Source);
        Assert.Null(await Store.Feeds.Last("hill", "valley-feed", Cancel));
        Assert.Equal(3, (await Store.Weather.ReadSourced("valley", Monday, Monday, Cancel)).Count);
        Assert.NotNull(await Store.Feeds.Last("valley", "valley-feed", Cancel));
    }

    private Task Foretell(DateTimeOffset fetchedAt, params WeatherReading[] readings) =>
        Store.Weather.SaveFromFeed("hill", "valley-feed", [], readings, fetchedAt, Cancel);

    private Task<IReadOnlyList<SourcedReading>> ReadAll() =>
        Store.Weather.ReadSourced("hill", DateTimeOffset.MinValue, DateTimeOffset.MaxValue, Cancel);
}
