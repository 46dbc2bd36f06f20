using WitherAdvisor.Store.Sqlite;

namespace WitherAdvisor.Store.Tests.Sqlite;

public sealed class SqliteMigrationsTests : IDisposable
{
    private readonly string path = Path.Combine(Directory.CreateTempSubdirectory("wither-store-").FullName, "wither.db");

    private string Address => $"Data Source={path};Pooling=False";

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
    public void A_file_that_is_no_database_is_refused_and_left_alone()
    {
        File.WriteAllText(path, "the weather book of an invented estate, by mistake");

        Assert.ThrowsAny<Exception>(() => SqliteDatabase.Open(path));

        Assert.Equal("the weather book of an invented estate, by mistake", File.ReadAllText(path));
    }

    public void Dispose() => Directory.Delete(Path.GetDirectoryName(path)!, recursive: true);
}
