using Microsoft.Data.Sqlite;
using WitherAdvisor.Loft.Kept.Batches;
using WitherAdvisor.Loft.Kept.Coefficients;
using WitherAdvisor.Loft.Kept.Outcomes;
using WitherAdvisor.Loft.Kept.Sites;
using WitherAdvisor.Loft.Kept.Weather;
using WitherAdvisor.Store.Contract;

namespace WitherAdvisor.Store.Sqlite.Tests;

/// <summary>A real database file in a folder of its own, gone after the test.</summary>
public sealed class TemporaryStore : IStoreUnderTest, IDisposable
{
    private readonly TemporaryFolder folder = new();

    public TemporaryStore()
    {
        FilePath = folder.File(Path.Combine("made-on-first-start", "wither.db"));
        Database = SqliteDatabase.Open(FilePath);
    }

    public static CancellationToken Cancel => TestContext.Current.CancellationToken;

    public string FilePath { get; }

    public ISiteStore Sites => new SqliteSites(Database);

    public IWeatherStore Weather => new SqliteWeather(Database);

    public IBatchStore Batches => new SqliteBatches(Database);

    public IOutcomeStore Outcomes => new SqliteOutcomes(Database);

    public IFeedLog Feeds => new SqliteFeedLog(Database);

    public ICoefficientStore Coefficients => new SqliteCoefficients(Database);

    public IRecalibrationStore Recalibrations => new SqliteRecalibrations(Database);

    internal SqliteDatabase Database { get; private set; }

    public ValueTask InitializeAsync() => ValueTask.CompletedTask;

    public void Close() => Database.Dispose();

    public Task Reopen()
    {
        Close();
        Database = SqliteDatabase.Open(FilePath);
        return Task.CompletedTask;
    }

    /// <summary>Changes the file as an older version or a stranger may have left it.</summary>
    public void Execute(string sql)
    {
        using var connection = new SqliteConnection($"Data Source={FilePath};Pooling=False");
        connection.Open();
        using var command = connection.CreateCommand();
#pragma warning disable CA2100 // the tests' own text
        command.CommandText = sql;
#pragma warning restore CA2100
        command.ExecuteNonQuery();
    }

    /// <summary>What a stranger to our code reads in the file.</summary>
    public IReadOnlyList<object?> Column(string sql)
    {
        using var connection = new SqliteConnection($"Data Source={FilePath};Pooling=False");
        connection.Open();
        using var command = connection.CreateCommand();
#pragma warning disable CA2100 // the tests' own text
        command.CommandText = sql;
#pragma warning restore CA2100
        using var reader = command.ExecuteReader();
        var values = new List<object?>();
        while (reader.Read())
        {
            values.Add(reader.IsDBNull(0) ? null : reader.GetValue(0));
        }

        return values;
    }

    public void Dispose()
    {
        Close();
        folder.Dispose();
    }

    public ValueTask DisposeAsync()
    {
        Dispose();
        return ValueTask.CompletedTask;
    }
}
