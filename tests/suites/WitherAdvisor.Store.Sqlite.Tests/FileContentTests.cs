using Microsoft.Data.Sqlite;
using WitherAdvisor.Leaf;
using WitherAdvisor.Loft.Kept.Batches;
using WitherAdvisor.Loft.Kept.Coefficients;
using WitherAdvisor.Loft.Kept.Sites;
using WitherAdvisor.Loft.Kept.Weather;
using WitherAdvisor.Readings;
using WitherAdvisor.Readings.Sources;
using WitherAdvisor.Store.Contract;
using WitherAdvisor.WeatherFeeds;
using static WitherAdvisor.Store.Contract.Invented;
using static WitherAdvisor.Store.Sqlite.Tests.TemporaryStore;

namespace WitherAdvisor.Store.Sqlite.Tests;

/// <summary>What stands in the file itself, for whoever reads it with another program, and what older versions left in it.</summary>
public sealed class FileContentTests : IAsyncLifetime
{
    private static readonly FeedFetch Refused = new(
        "hill", "valley-feed", Monday.AddHours(1), new FeedFault.LeftInPeace(new FeedFault.FeedFailed(503, null)), HoursGot: 0, NewestAnalysed: null, Cell: null, []);

    private static readonly FeedFetch Good = new(
        "hill", "valley-feed", Monday, Refusal: null, HoursGot: 264, Monday, Cell: null, [new FeedNote.UnknownHours("precipitation", 2, Monday.AddHours(-30))]);

    private readonly TemporaryStore store = new();

    public async ValueTask InitializeAsync() => await store.WithTrough();

    [Fact]
    public async Task What_nobody_said_is_null()
    {
        await store.Sites.PutSite(Sparse<StoredSite>(), Cancel);
        await Add(Sparse<StoredBatch>() with { SiteId = "hill", TroughId = "t1" });
        await store.Weather.SaveReadings("hill", WeatherSource.Observed, [new(Monday, DryBulbC: 18)], Monday, Cancel);

        Assert.Equal([null], store.Column("SELECT COALESCE(StationPressurePa, Feed) FROM Site WHERE Id <> 'hill'"));
        Assert.Equal([null], store.Column("SELECT COALESCE(Cultivar, BushAge, Standard, SurfaceFeel) FROM Batch"));
        Assert.Equal([null], store.Column("SELECT RainMm FROM WeatherReading"));
    }

    [Fact]
    public async Task Choices_are_words()
    {
        foreach (SurfaceFeel feel in Enum.GetValues<SurfaceFeel>())
        {
            StoredBatch batch = Batch(feel.ToString());
            await Add(batch with { Batch = batch.Batch with { SurfaceFeel = feel } });
        }

        await store.Weather.SaveFromFeed("hill", "valley-feed", [new(Monday, RainMm: 1)], [new(Monday, RainMm: 2)], Monday, Cancel);

        Assert.Equal(["damp", "dripping", "dry", "wet"], store.Column("SELECT SurfaceFeel FROM Batch ORDER BY SurfaceFeel"));
        Assert.Equal(["feedanalysis", "feedforecast"], store.Column("SELECT Source FROM WeatherReading ORDER BY Source"));
    }

    [Fact]
    public async Task Times_are_milliseconds_of_UTC()
    {
        await store.Weather.SaveReadings("hill", WeatherSource.Observed, [new(Monday, RainMm: 1)], Monday.AddDays(1), Cancel);

        Assert.Equal([Monday.ToUnixTimeMilliseconds()], store.Column("SELECT TimeMs FROM WeatherReading"));
        Assert.Equal([Monday.AddDays(1).ToUnixTimeMilliseconds()], store.Column("SELECT SavedAtMs FROM WeatherReading"));
    }

    [Fact]
    public async Task Only_the_sign_of_zero_is_lost()
    {
        StoredSite site = Site("hill");

        await store.Sites.PutSite(site with { Site = site.Site with { ElevationM = -0.0 } }, Cancel);

        Assert.False(double.IsNegative((await store.Sites.FindSite("hill", Cancel))!.Site.ElevationM));
    }

    [Theory]
    [InlineData("UPDATE CoefficientSet SET SetJson = '{}'")]
    [InlineData("DELETE FROM CoefficientSet")]
    public async Task The_file_itself_refuses_to_change_or_drop_a_set(string sql)
    {
        StoredCoefficientSet set = Filled<StoredCoefficientSet>() with { SiteId = "hill", Name = "first" };
        await store.Coefficients.Add(set, Cancel);

        Assert.Throws<SqliteException>(() => store.Column(sql));

        Assert.Equal(set, await store.Coefficients.Find("hill", "first", Cancel));
    }

    [Fact]
    public async Task What_is_kept_of_a_fetch_is_a_code_with_its_arguments()
    {
        await store.Feeds.Add(Good, Cancel);
        await store.Feeds.Add(Refused, Cancel);

        Assert.Equal(
            [null, "{\"code\":\"left_in_peace\",\"before\":{\"code\":\"feed_failed\",\"status\":503,\"said\":null}}"],
            store.Column("SELECT Refusal FROM FeedFetch ORDER BY FetchedAtMs"));
        Assert.StartsWith(
            "[{\"code\":\"unknown_hours\",\"column\":\"precipitation\",\"hours\":2,\"first\":",
            (string)store.Column("SELECT Notes FROM FeedFetch ORDER BY FetchedAtMs")[0]!, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Sentences_of_a_fetch_that_an_older_version_kept_come_back_as_said_then()
    {
        await store.Feeds.Add(Good, Cancel);
        await store.Feeds.Add(Refused, Cancel);
        store.Execute("UPDATE FeedFetch SET Refusal = 'The feed failed (status 503)' WHERE Refusal IS NOT NULL");
        store.Execute("UPDATE FeedFetch SET Notes = '[\"Rain is missing.\",\"The cell lies 120 m below.\"]' WHERE Refusal IS NULL");

        Assert.Equal(new FeedFault.SaidThen("The feed failed (status 503)"), (await store.Feeds.Last("hill", "valley-feed", Cancel))!.Refusal);
        Assert.Equal(
            [new FeedNote.SaidThen("Rain is missing."), new FeedNote.SaidThen("The cell lies 120 m below.")],
            (await store.Feeds.LastGood("hill", "valley-feed", Cancel))!.Notes);
    }

    [Fact]
    public async Task Forgotten_fetches_are_gone_from_the_file()
    {
        DateTimeOffset now = Monday.AddDays(200);
        foreach (FeedFetch fetch in new[] { Good, Good with { FetchedAt = Monday.AddHours(2) }, Refused, Refused, Refused with { FetchedAt = now } })
        {
            await store.Feeds.Add(fetch, Cancel);
        }

        Assert.Equal(
            [Monday.AddHours(2), now],
            store.Column("SELECT FetchedAtMs FROM FeedFetch ORDER BY 1").Select(ms => DateTimeOffset.FromUnixTimeMilliseconds((long)ms!)));
    }

    [Fact]
    public async Task Why_a_recalibration_failed_is_kept_as_a_code_and_a_sentence_of_an_older_version_is_told_as_it_was()
    {
        await store.Recalibrations.Queue("r1", "hill", Monday, Cancel);
        await store.Recalibrations.End("r1", Monday, RecalibrationStatus.Failed, new RecalibrationFailure.OwnFault(), Cancel);
        Assert.Equal(["{\"code\":\"own_fault\"}"], store.Column("SELECT Failure FROM Recalibration"));

        store.Execute("UPDATE Recalibration SET Failure = 'The service met a fault of its own; its log says which.'");

        Assert.Equal(
            new RecalibrationFailure.SaidThen("The service met a fault of its own; its log says which."),
            (await store.Recalibrations.Find("r1", Cancel))!.Failure);
    }

    public ValueTask DisposeAsync() => store.DisposeAsync();

    private Task<AddedBatch> Add(StoredBatch batch) => store.Batches.Add(batch, AdviceFor($"advice for {batch.Id}", batch.Id), onceOnly: false, Cancel);
}
