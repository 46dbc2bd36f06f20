using Dapper;
using DbUp;
using Microsoft.Data.Sqlite;
using WitherAdvisor.Readings;
using WitherAdvisor.Readings.Sources;

namespace WitherAdvisor.Store.Sqlite.Tests;

public sealed class SqliteMigrationsTests : IDisposable
{
    private readonly TemporaryFolder folder = new();

    private string FilePath => folder.File("wither.db");

    private string Address => $"Data Source={FilePath};Pooling=False";

    [Fact]
    public void A_new_database_gets_every_script_in_order_and_a_second_start_none()
    {
        var scripts = typeof(SqliteMigrations).Assembly.GetManifestResourceNames()
            .Where(name => name.EndsWith(".sql", StringComparison.Ordinal)).Order(StringComparer.Ordinal).ToList();
        Assert.NotEmpty(scripts);

        Assert.Equal(scripts, SqliteMigrations.Apply(Address, logger: null));
        Assert.Empty(SqliteMigrations.Apply(Address, logger: null));
    }

    [Fact]
    public async Task A_database_of_the_first_version_keeps_its_rows_and_their_meaning()
    {
        var cancel = TestContext.Current.CancellationToken;
        ApplyFirstScriptOnly();
        Execute("""
            INSERT INTO Site VALUES ('hill', 'Hill', 'Asia/Colombo', 1500, 7, 80, 52.8, NULL, 'short', 7.2, 0.6, 35, 10, 12, 9, 6, 18, 0.03, 0.5);
            INSERT INTO WeatherReading VALUES ('hill', 'observed', 3600000, 18.5, 15, NULL, NULL, 2.5, 1, 85000, 420, 7200000);
            INSERT INTO WeatherReading VALUES ('hill', 'forecast', 3600000, 21, NULL, NULL, 0.75, NULL, NULL, NULL, NULL, 1800000);
            INSERT INTO WeatherReading VALUES ('hill', 'observed', 7200000, NULL, NULL, 17.25, NULL, 0, NULL, NULL, NULL, 7200000);
            INSERT INTO RainTotal VALUES ('hill', 0, 3600000, 12.5, 7200000);
            """);

        using var database = SqliteDatabase.Open(FilePath);

        var epoch = DateTimeOffset.UnixEpoch;
        var weather = new SqliteWeather(database);
        Assert.Equal(
            [
                new SourcedReading(new(epoch.AddHours(1), 18.5, 15, null, null, 2.5, 1, 85_000, 420), WeatherSource.Observed, null, epoch.AddHours(2)),
                new SourcedReading(new(epoch.AddHours(1), 21, RelativeHumidity: 0.75), WeatherSource.CallerForecast, null, epoch.AddHours(0.5)),
                new SourcedReading(new(epoch.AddHours(2), WetBulbC: 17.25, RainMm: 0), WeatherSource.Observed, null, epoch.AddHours(2)),
            ],
            await weather.ReadSourced("hill", epoch, epoch.AddDays(1), cancel));
        Assert.Equal([new RainTotal(epoch, epoch.AddHours(1), 12.5)], await weather.ReadRainTotals("hill", epoch, epoch.AddDays(1), cancel));
        var site = await new SqliteSites(database).FindSite("hill", cancel);
        Assert.Equal(("Hill", 1500.0, null), (site!.Name, site.Site.ElevationM, site.Feed));
    }

    [Fact]
    public void A_file_that_is_no_database_is_refused_and_left_alone()
    {
        File.WriteAllText(FilePath, "the weather book of an invented estate, by mistake");

        Assert.ThrowsAny<Exception>(() => SqliteDatabase.Open(FilePath));

        Assert.Equal("the weather book of an invented estate, by mistake", File.ReadAllText(FilePath));
    }

    private void ApplyFirstScriptOnly()
    {
        var result = DeployChanges.To.SqliteDatabase(Address)
            .WithScriptsEmbeddedInAssembly(typeof(SqliteMigrations).Assembly, name => name.Contains(".0001_", StringComparison.Ordinal))
            .LogToNowhere().Build().PerformUpgrade();
        Assert.Single(result.Scripts);
    }

    private void Execute(string sql)
    {
        using var connection = new SqliteConnection(Address);
        connection.Execute(sql);
    }

    public void Dispose() => folder.Dispose();
}
