using System.Data.Common;
using System.Runtime.CompilerServices;
using Dapper;
using Microsoft.Data.Sqlite;
using Microsoft.Extensions.Logging;
using WitherAdvisor.Loft.Kept;

namespace WitherAdvisor.Store.Sqlite;

/// <summary>
/// One database file. Many may read while one writes. Queries are plain synchronous functions: SQLite works within the
/// process and its provider's asynchronous methods run synchronously anyway; only waiting for one's turn to write does not block.
/// </summary>
internal sealed class SqliteDatabase : IDisposable
{
    private const int ForeignKeyViolated = 787;
    private readonly string connectionString;

    // One writer at a time by our own queue: SQLite's lock is polled, which makes unlucky writers wait long or fail.
    private readonly SemaphoreSlim writerGate = new(1, 1);

    private SqliteDatabase(string connectionString) => this.connectionString = connectionString;

    /// <summary>Opens the file, makes it and its folder where there is none, and brings its tables up to date.</summary>
    public static SqliteDatabase Open(string path, ILogger? logger = null)
    {
        var fullPath = Path.GetFullPath(path);
        Directory.CreateDirectory(Path.GetDirectoryName(fullPath)!);
        var address = new SqliteConnectionStringBuilder
        {
            DataSource = fullPath,
            ForeignKeys = true,
            DefaultTimeout = 5,
        }.ToString();

        SqliteMigrations.Apply(address, logger);
        return new SqliteDatabase(address);
    }

    public async Task<T> Read<T>(Func<SqliteConnection, T> query, CancellationToken cancel)
    {
        await using var connection = await Connect(cancel);
        return query(connection);
    }

    /// <summary>Row by row, as it is read; the connection is open until the last.</summary>
    public async IAsyncEnumerable<T> Stream<T>(
        Func<SqliteConnection, IEnumerable<T>> query, [EnumeratorCancellation] CancellationToken cancel)
    {
        await using var connection = await Connect(cancel);
        foreach (var row in query(connection))
        {
            cancel.ThrowIfCancellationRequested();
            yield return row;
        }
    }

    /// <summary>All that <paramref name="change"/> does is kept, or nothing of it.</summary>
    /// <param name="owner">What the rows belong to, for people, where it may be missing.</param>
    /// <exception cref="ParentNotFoundException">The store does not hold the owner.</exception>
    public Task<T> Write<T>(string owner, Func<SqliteConnection, DbTransaction, T> change, CancellationToken cancel) =>
        Write(owner, change, _ => true, cancel);

    /// <summary>The same, and nothing is kept either where <paramref name="change"/> answers false.</summary>
    /// <exception cref="ParentNotFoundException">The store does not hold the owner.</exception>
    public Task<bool> WriteOrTakeBack(string owner, Func<SqliteConnection, DbTransaction, bool> change, CancellationToken cancel) =>
        Write(owner, change, good => good, cancel);

    private async Task<T> Write<T>(
        string owner, Func<SqliteConnection, DbTransaction, T> change, Func<T, bool> keep, CancellationToken cancel)
    {
        await writerGate.WaitAsync(cancel);
        try
        {
            await using var connection = await Connect(cancel);
            await using var transaction = await connection.BeginTransactionAsync(cancel);
            var result = change(connection, transaction);
            await (keep(result) ? transaction.CommitAsync(cancel) : transaction.RollbackAsync(cancel));
            return result;
        }
        catch (SqliteException failure) when (failure.SqliteExtendedErrorCode == ForeignKeyViolated)
        {
            throw new ParentNotFoundException($"The store holds no {owner}.", failure);
        }
        finally
        {
            writerGate.Release();
        }
    }

    /// <summary>Closes the file, so that the write-ahead log is folded into it.</summary>
    public void Dispose()
    {
        using var connection = new SqliteConnection(connectionString);
        SqliteConnection.ClearPool(connection);
        writerGate.Dispose();
    }

    private async Task<SqliteConnection> Connect(CancellationToken cancel)
    {
        var connection = new SqliteConnection(connectionString);
        await connection.OpenAsync(cancel);

        // FULL, since NORMAL in WAL mode may lose acknowledged commits when the power fails.
        await connection.ExecuteAsync("PRAGMA synchronous = FULL; PRAGMA busy_timeout = 5000;");
        return connection;
    }
}
