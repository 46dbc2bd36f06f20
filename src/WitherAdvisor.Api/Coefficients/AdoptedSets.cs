using WitherAdvisor.Coefficients;
using WitherAdvisor.Leaf;
using WitherAdvisor.Loft.Advising;
using WitherAdvisor.Loft.Kept.Coefficients;

namespace WitherAdvisor.Api.Coefficients;

/// <summary>Reads a site's adopted set in the form that it is kept in.</summary>
internal sealed class AdoptedSets(ICoefficientStore coefficients) : IAdoptedCoefficients
{
    public async Task<WitherCoefficients?> For(string siteId, LeafLabel label, CancellationToken cancel = default) =>
        await coefficients.Adopted(siteId, cancel) is { } set
            ? CoefficientsMapping.ToDomain(SiteCoefficients.FromJson(set.SetJson).For(label))
            : null;
}
