using WitherAdvisor.Fields;
using WitherAdvisor.Loft.Kept.Sites;
using WitherAdvisor.Sites;

namespace WitherAdvisor.Api.Troughs;

/// <summary>A trough between request, domain and store.</summary>
internal static class TroughMapping
{
    public static Trough ToDomain(TroughRequest input) => new(
        input.AreaM2,
        input.AirflowM3PerSPerM2 ?? Trough.UsualAirflowM3PerSM2,
        Percent.ToFraction(input.SlowestFanSharePercent) ?? 1,
        input.MostLoadKgPerM2 ?? Trough.UsualMostLoadKgPerM2,
        input.HeaterKw,
        input.FanKw);

    public static StoredTrough ToStored(string siteId, string id, TroughRequest input) =>
        new(siteId, id, input.Name, ToDomain(input));

    public static TroughResponse ToResponse(StoredTrough stored) => new(stored.SiteId, stored.Id, ToRequest(stored));

    public static TroughRequest ToRequest(StoredTrough stored) => ToRequest(stored.Name, stored.Trough);

    /// <summary>As a caller would state it inline, with every setting stated.</summary>
    public static TroughRequest ToRequest(string name, Trough trough) => new()
    {
        Name = name,
        AreaM2 = trough.AreaM2,
        AirflowM3PerSPerM2 = trough.AirflowM3PerSM2,
        SlowestFanSharePercent = Percent.Of(trough.SlowestFanShare),
        MostLoadKgPerM2 = trough.MostLoadKgPerM2,
        HeaterKw = trough.HeaterKW,
        FanKw = trough.FanKW,
    };
}
