using System.Data.Common;
using Dapper;
using Microsoft.Data.Sqlite;
using WitherAdvisor.Loft.Kept.Coefficients;

namespace WitherAdvisor.Store.Sqlite;

/// <summary>Coefficient sets and adoptions, in SQLite.</summary>
internal sealed class SqliteCoefficients(SqliteDatabase database) : ICoefficientStore
{
    public const string NewestAdoption = "SELECT SetName FROM Adoption WHERE SiteId = @siteId ORDER BY Number DESC LIMIT 1";

    private const string AddSql = """
        INSERT INTO CoefficientSet (SiteId, Name, MadeAtMs, Origin, SetJson, ReportJson)
        VALUES (@SiteId, @Name, @MadeAtMs, @Origin, @SetJson, @ReportJson)
        """;

    private const string FindSql = """
        SELECT SiteId, Name, MadeAtMs, Origin, SetJson, ReportJson FROM CoefficientSet WHERE SiteId = @siteId AND Name = @name
        """;

    private const string AdoptedSql = $"""
        SELECT SiteId, Name, MadeAtMs, Origin, SetJson FROM CoefficientSet WHERE SiteId = @siteId AND Name = ({NewestAdoption})
        """;

    private const string ListSql = """
        SELECT SiteId, Name, MadeAtMs, Origin, SetJson FROM CoefficientSet
        WHERE SiteId = @siteId ORDER BY MadeAtMs DESC, rowid DESC
        """;

    private const string AdoptSql = """
        INSERT INTO Adoption (SiteId, SetName, FromMs, AdoptedBy, Reason) VALUES (@SiteId, @SetName, @FromMs, @AdoptedBy, @Reason)
        """;

    private const string AdoptionsSql = """
        SELECT SiteId, SetName, FromMs, AdoptedBy, Reason FROM Adoption WHERE SiteId = @siteId ORDER BY Number DESC
        """;

    public Task<bool> Add(StoredCoefficientSet set, CancellationToken cancel = default) => database.Write(
        owner: $"site '{set.SiteId}'",
        (connection, transaction) => connection.Execute(AddSql + " ON CONFLICT (SiteId, Name) DO NOTHING", CoefficientSetRow.Of(set), transaction) == 1,
        cancel);

    public Task<StoredCoefficientSet?> Find(string siteId, string name, CancellationToken cancel = default) => database.Read(
        connection => connection.QuerySingleOrDefault<CoefficientSetRow>(FindSql, new { siteId, name })?.ToSet(), cancel);

    public Task<IReadOnlyList<StoredCoefficientSet>> List(string siteId, CancellationToken cancel = default) =>
        database.Read<IReadOnlyList<StoredCoefficientSet>>(
            connection => [.. connection.Query<CoefficientSetRow>(ListSql, new { siteId }).Select(row => row.ToSet())], cancel);

    public Task<StoredCoefficientSet?> Adopted(string siteId, CancellationToken cancel = default) => database.Read(
        connection => connection.QuerySingleOrDefault<CoefficientSetRow>(AdoptedSql, new { siteId })?.ToSet(), cancel);

    public Task Adopt(StoredAdoption adoption, CancellationToken cancel = default) => database.Write(
        owner: $"set '{adoption.SetName}' of site '{adoption.SiteId}'",
        (connection, transaction) => connection.Execute(AdoptSql, AdoptionRow.Of(adoption), transaction),
        cancel);

    public Task<IReadOnlyList<StoredAdoption>> Adoptions(string siteId, CancellationToken cancel = default) =>
        database.Read<IReadOnlyList<StoredAdoption>>(
            connection => [.. connection.Query<AdoptionRow>(AdoptionsSql, new { siteId }).Select(row => row.ToAdoption())], cancel);

    /// <summary>Keeps a set as part of a larger change.</summary>
    public static void Add(StoredCoefficientSet set, SqliteConnection connection, DbTransaction transaction) =>
        connection.Execute(AddSql, CoefficientSetRow.Of(set), transaction);
}
