using WitherAdvisor.Coefficients;
using WitherAdvisor.Leaf;
using WitherAdvisor.Loft.Kept.Coefficients;

namespace WitherAdvisor.Loft.Coefficients;

/// <summary>The coefficients that a site's advice is made with.</summary>
public sealed class AdoptedCoefficients(ICoefficientStore coefficients)
{
    /// <summary>Those for a lot of leaf of a site; null where the site's advice is made with the defaults.</summary>
    public async Task<WitherCoefficients?> For(string siteId, LeafLabel label, CancellationToken cancel = default) =>
        await coefficients.Adopted(siteId, cancel) is { } set ? SetRecord.Read(set.SetJson).For(label) : null;
}
