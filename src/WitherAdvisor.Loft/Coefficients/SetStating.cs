using WitherAdvisor.Coefficients;
using WitherAdvisor.Loft.Kept.Coefficients;

namespace WitherAdvisor.Loft.Coefficients;

/// <summary>Keeps sets that a person states; one is adopted by a further call.</summary>
public sealed class SetStating(ICoefficientStore coefficients, TimeProvider clock)
{
    /// <summary>Proposals and defaults are named by the service.</summary>
    public static IReadOnlyList<string> OwnNames { get; } = ["learned-", "defaults-"];

    /// <summary>Keeps a set for all leaf of a site under a name; null where the name is taken, as sets never change.</summary>
    public async Task<StoredCoefficientSet?> State(string siteId, string name, WitherCoefficients stated, CancellationToken cancel)
    {
        StoredCoefficientSet set = new(
            siteId, name, clock.NowInMilliseconds(), CoefficientOrigin.ByHand, SetRecord.Write(new(stated with { SetName = name }, [])), null);
        return !OwnNames.Any(own => name.StartsWith(own, StringComparison.Ordinal)) && await coefficients.Add(set, cancel) ? set : null;
    }
}
