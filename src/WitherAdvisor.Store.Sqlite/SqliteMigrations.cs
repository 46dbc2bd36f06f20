using Dapper;
using DbUp;
using Microsoft.Data.Sqlite;
using Microsoft.Extensions.Logging;

namespace WitherAdvisor.Store.Sqlite;

/// <summary>Brings a database's tables up to date: the scripts of Migrations/ that it has not seen, by name.</summary>
internal static class SqliteMigrations
{
    /// <summary>Names of the scripts applied now; none where the database was up to date.</summary>
    public static IReadOnlyList<string> Apply(string connectionString, ILogger? logger)
    {
        UseWriteAheadLog(connectionString);
        var result = DeployChanges.To.SqliteDatabase(connectionString)
            .WithScriptsEmbeddedInAssembly(typeof(SqliteMigrations).Assembly)
            .WithTransactionPerScript()
            .LogToNowhere()
            .Build()
            .PerformUpgrade();
        if (!result.Successful)
        {
            throw new InvalidOperationException($"The database could not be brought up to date: {result.ErrorScript?.Name}.", result.Error);
        }

        var applied = result.Scripts.Select(script => script.Name).ToList();
        if (applied.Count > 0)
        {
            logger?.LogInformation("Brought the database up to date with {Scripts}", string.Join(", ", applied));
        }

        return applied;
    }

    // Kept in the file itself, so once is enough; it cannot be set within a migration's transaction.
    private static void UseWriteAheadLog(string connectionString)
    {
        using var connection = new SqliteConnection(connectionString);
        connection.Execute("PRAGMA journal_mode = WAL;");
    }
}
