namespace WitherAdvisor.Store.Sqlite;

/// <summary>A row of CoefficientSet, in the order selected.</summary>
internal sealed record CoefficientSetRow(string SiteId, string Name, long MadeAtMs, string Origin, string SetJson, string? ReportJson)
{
    public static CoefficientSetRow Of(StoredCoefficientSet set) => new(
        set.SiteId, set.Name, set.MadeAt.ToUnixTimeMilliseconds(), StoredWord.Of(set.Origin), set.SetJson, set.ReportJson);

    public StoredCoefficientSet ToSet() => new(
        SiteId, Name, DateTimeOffset.FromUnixTimeMilliseconds(MadeAtMs), StoredWord.Read<CoefficientOrigin>(Origin)!.Value, SetJson, ReportJson);
}
