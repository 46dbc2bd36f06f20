namespace WitherAdvisor.Loft.Kept.Coefficients;

/// <summary>A coefficient set of a site as kept; never changed.</summary>
/// <param name="Name">Unique within the site.</param>
/// <param name="SetJson">Values, spreads and sets by cultivar and standard, as <see cref="WitherAdvisor.Loft.Coefficients.SetRecord"/> writes them.</param>
/// <param name="ReportJson">What to judge it by, UTF-8 JSON; null where it was not learned.</param>
public sealed record StoredCoefficientSet(
    string SiteId, string Name, DateTimeOffset MadeAt, CoefficientOrigin Origin, string SetJson, string? ReportJson);
