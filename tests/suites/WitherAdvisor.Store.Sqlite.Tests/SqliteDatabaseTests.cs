using Dapper;
using WitherAdvisor.Loft.Kept;
using WitherAdvisor.Store.Contract;
using static WitherAdvisor.Store.Contract.Invented;
using static WitherAdvisor.Store.Sqlite.Tests.TemporaryStore;

namespace WitherAdvisor.Store.Sqlite.Tests;

public sealed class SqliteDatabaseTests : IDisposable
{
    private readonly TemporaryStore store = new();

    // Numbers as SQLite's documentation of its pragmas gives them: synchronous 2 is FULL.
    [Theory]
    [InlineData("journal_mode", "wal")]
    [InlineData("synchronous", "2")]
    [InlineData("busy_timeout", "5000")]
    [InlineData("foreign_keys", "1")]
    public async Task An_acknowledged_write_survives_a_power_cut(string pragma, string wanted)
    {
        var reading = await store.Database.Read(connection => connection.ExecuteScalar<string>($"PRAGMA {pragma}"), Cancel);
        var writing = await store.Database.Write(
            "row", (connection, transaction) => connection.ExecuteScalar<string>($"PRAGMA {pragma}", transaction: transaction), Cancel);

        Assert.Equal((wanted, wanted), (reading, writing));
    }

    [Fact]
    public async Task A_closed_database_is_one_file()
    {
        await store.WithTrough();

        store.Close();

        Assert.Equal([store.FilePath], Directory.GetFiles(Path.GetDirectoryName(store.FilePath)!));
        Assert.Equal(["hill"], store.Column("SELECT Id FROM Site"));
    }

    [Fact]
    public async Task A_change_that_fails_midway_leaves_nothing_behind_and_lets_the_next_one_in()
    {
        await store.WithTrough();

        await Assert.ThrowsAsync<ParentNotFoundException>(() => store.Database.Write(
            "site",
            (connection, transaction) =>
                connection.Execute("INSERT INTO RainTotal VALUES ('hill', 1, 2, 3.0, 4)", transaction: transaction)
                + connection.Execute("INSERT INTO RainTotal VALUES ('nowhere', 1, 2, 3.0, 4)", transaction: transaction),
            Cancel));

        Assert.Equal([0L], store.Column("SELECT COUNT(*) FROM RainTotal"));
        await store.Sites.PutSite(Site("valley"), Cancel);
        Assert.Equal(2, (await store.Sites.ListSites(Cancel)).Count);
    }

    [Fact]
    public async Task A_writer_waits_for_its_turn_without_holding_a_thread()
    {
        using var leave = new ManualResetEventSlim();
        var inside = new TaskCompletionSource();
        var first = Task.Run(
            () => store.Database.Write(
                "row",
                (_, _) =>
                {
                    inside.SetResult();
                    leave.Wait(Cancel);
                    return 0;
                },
                Cancel),
            Cancel);
        await inside.Task;

        var second = store.Sites.PutSite(Site("hill"), Cancel);
        Assert.False(second.IsCompleted);
        Assert.Empty(await store.Sites.ListSites(Cancel));

        leave.Set();
        await Task.WhenAll(first, second);
        Assert.Single(await store.Sites.ListSites(Cancel));
    }

    public void Dispose() => store.Dispose();
}
