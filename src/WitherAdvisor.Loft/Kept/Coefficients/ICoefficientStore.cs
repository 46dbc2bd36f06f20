namespace WitherAdvisor.Loft.Kept.Coefficients;

/// <summary>
/// Coefficient sets of sites, and which of them was adopted when; both only ever grow. Times come back as the same
/// instants to the millisecond, with offset zero.
/// </summary>
public interface ICoefficientStore
{
    /// <summary>Keeps a set. False where the site has one of that name, which stays as it is.</summary>
    /// <exception cref="ParentNotFoundException">No such site.</exception>
    Task<bool> Add(StoredCoefficientSet set, CancellationToken cancel = default);

    Task<StoredCoefficientSet?> Find(string siteId, string name, CancellationToken cancel = default);

    /// <summary>Newest first, without their reports, which are long.</summary>
    Task<IReadOnlyList<StoredCoefficientSet>> List(string siteId, CancellationToken cancel = default);

    /// <summary>The set that a site's advice is made with, without its report; null where that are the defaults.</summary>
    Task<StoredCoefficientSet?> Adopted(string siteId, CancellationToken cancel = default);

    /// <summary>Adopts a set from now on.</summary>
    /// <exception cref="ParentNotFoundException">No such set at that site.</exception>
    Task Adopt(StoredAdoption adoption, CancellationToken cancel = default);

    /// <summary>Newest first: the first of them holds.</summary>
    Task<IReadOnlyList<StoredAdoption>> Adoptions(string siteId, CancellationToken cancel = default);
}
