using WitherAdvisor.Loft.Kept.Coefficients;

namespace WitherAdvisor.Store.Sqlite;

/// <summary>A row of Adoption, in the order selected.</summary>
internal sealed record AdoptionRow(string SiteId, string? SetName, long FromMs, string? AdoptedBy, string? Reason)
{
    public static AdoptionRow Of(StoredAdoption adoption) => new(
        adoption.SiteId, adoption.SetName, adoption.From.ToUnixTimeMilliseconds(), adoption.AdoptedBy, adoption.Reason);

    public StoredAdoption ToAdoption() => new(SiteId, SetName, DateTimeOffset.FromUnixTimeMilliseconds(FromMs), AdoptedBy, Reason);
}
