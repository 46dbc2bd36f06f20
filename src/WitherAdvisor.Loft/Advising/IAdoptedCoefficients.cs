using WitherAdvisor.Coefficients;
using WitherAdvisor.Leaf;

namespace WitherAdvisor.Loft.Advising;

/// <summary>The coefficients that a site's advice is made with.</summary>
public interface IAdoptedCoefficients
{
    /// <summary>For a lot of leaf; null where the site adopted no set.</summary>
    Task<WitherCoefficients?> For(string siteId, LeafLabel label, CancellationToken cancel = default);
}
