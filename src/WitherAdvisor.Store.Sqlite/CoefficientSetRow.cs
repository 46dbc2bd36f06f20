using WitherAdvisor.Loft.Kept.Coefficients;

namespace WitherAdvisor.Store.Sqlite;

/// <summary>A row of CoefficientSet, in the order selected.</summary>
internal sealed record CoefficientSetRow(string SiteId, string Name, long MadeAtMs, string Origin, string SetJson, string? ReportJson)
{
    /// <summary>Where the report, which is long, is not selected.</summary>
    public CoefficientSetRow(string siteId, string name, long madeAtMs, string origin, string setJson)
        : this(siteId, name, madeAtMs, origin, setJson, null)
    {
    }

    public static CoefficientSetRow Of(StoredCoefficientSet set) => new(
        set.SiteId, set.Name, set.MadeAt.ToUnixTimeMilliseconds(), StoredWord.Of(set.Origin), set.SetJson, set.ReportJson);

    public StoredCoefficientSet ToSet() => new(
        SiteId, Name, DateTimeOffset.FromUnixTimeMilliseconds(MadeAtMs), StoredWord.Read<CoefficientOrigin>(Origin)!.Value, SetJson, ReportJson);
}
