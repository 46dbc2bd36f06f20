namespace WitherAdvisor.Loft.Kept.Coefficients;

/// <summary>From when on a site's advice is made with a set.</summary>
/// <param name="SetName">Null for the defaults.</param>
/// <param name="AdoptedBy">Who decided it, as they called themselves; null where nobody said.</param>
/// <param name="Reason">Why, a person's words; null where nobody said.</param>
public sealed record StoredAdoption(string SiteId, string? SetName, DateTimeOffset From, string? AdoptedBy, string? Reason);
