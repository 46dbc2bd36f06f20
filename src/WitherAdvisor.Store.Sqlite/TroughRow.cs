using WitherAdvisor.Loft.Kept.Sites;
using WitherAdvisor.Sites;

namespace WitherAdvisor.Store.Sqlite;

/// <summary>A row of Trough, in the order selected.</summary>
internal sealed record TroughRow(
    string SiteId,
    string Id,
    string Name,
    double AreaM2,
    double AirflowM3PerSM2,
    double SlowestFanShare,
    double MostLoadKgPerM2,
    double? HeaterKW,
    double? FanKW)
{
    public static TroughRow Of(StoredTrough stored) => new(
        stored.SiteId, stored.Id, stored.Name,
        stored.Trough.AreaM2, stored.Trough.AirflowM3PerSM2, stored.Trough.SlowestFanShare, stored.Trough.MostLoadKgPerM2,
        stored.Trough.HeaterKW, stored.Trough.FanKW);

    public StoredTrough ToTrough() =>
        new(SiteId, Id, Name, new Trough(AreaM2, AirflowM3PerSM2, SlowestFanShare, MostLoadKgPerM2, HeaterKW, FanKW));
}
