namespace WitherAdvisor.Loft.Kept.Sites;

/// <summary>Sites and their troughs. A put creates or replaces.</summary>
public interface ISiteStore
{
    Task PutSite(StoredSite site, CancellationToken cancel = default);

    Task<StoredSite?> FindSite(string siteId, CancellationToken cancel = default);

    Task<IReadOnlyList<StoredSite>> ListSites(CancellationToken cancel = default);

    /// <summary>Creates or replaces a trough of a site.</summary>
    /// <exception cref="ParentNotFoundException">No such site.</exception>
    Task PutTrough(StoredTrough trough, CancellationToken cancel = default);

    Task<StoredTrough?> FindTrough(string siteId, string troughId, CancellationToken cancel = default);

    Task<IReadOnlyList<StoredTrough>> ListTroughs(string siteId, CancellationToken cancel = default);
}
