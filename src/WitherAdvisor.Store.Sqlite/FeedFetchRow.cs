using WitherAdvisor.Loft.Kept.Weather;

namespace WitherAdvisor.Store.Sqlite;

/// <summary>A row of FeedFetch, in the order selected.</summary>
internal sealed record FeedFetchRow(
    string SiteId,
    string Feed,
    long FetchedAtMs,
    string? Refusal,
    long HoursGot,
    long? NewestAnalysedMs,
    double? CellLatitudeDeg,
    double? CellLongitudeDeg,
    double? CellElevationM,
    string Notes)
{
    public static FeedFetchRow Of(FeedFetch fetch) => new(
        fetch.SiteId, fetch.Feed, fetch.FetchedAt.ToUnixTimeMilliseconds(), fetch.Refusal is { } fault ? FeedCodesJson.Write(fault) : null, fetch.HoursGot,
        fetch.NewestAnalysed?.ToUnixTimeMilliseconds(),
        fetch.Cell?.LatitudeDeg, fetch.Cell?.LongitudeDeg, fetch.Cell?.ElevationM,
        FeedCodesJson.Write(fetch.Notes));

    public FeedFetch ToFetch() => new(
        SiteId, Feed, DateTimeOffset.FromUnixTimeMilliseconds(FetchedAtMs),
        Refusal is null ? null : FeedCodesJson.ReadFault(Refusal), (int)HoursGot,
        NewestAnalysedMs is { } newest ? DateTimeOffset.FromUnixTimeMilliseconds(newest) : null,
        CellLatitudeDeg is { } latitude && CellLongitudeDeg is { } longitude ? new(latitude, longitude, CellElevationM) : null,
        FeedCodesJson.ReadNotes(Notes));
}
