using WitherAdvisor.Loft.Coefficients;
using WitherAdvisor.Loft.Kept.Coefficients;
using WitherAdvisor.Loft.Recalibrating.Running;
using WitherAdvisor.Recalibration.Report;

namespace WitherAdvisor.Loft.Adopting;

/// <summary>Adopts sets, and asks for a reason where nothing speaks for one.</summary>
public sealed class SetAdoption(ICoefficientStore coefficients, IReportForm form, TimeProvider clock)
{
    /// <summary>Adopts a set of a site, or the defaults, by name.</summary>
    public async Task<AdoptionResult> Adopt(string siteId, string name, AdoptionDecision decision, CancellationToken cancel)
    {
        bool isDefault = name == SiteSet.DefaultsName;
        StoredCoefficientSet? set = isDefault ? null : await coefficients.Find(siteId, name, cancel);
        if (set is null && !isDefault)
        {
            return new AdoptionResult.UnknownSet();
        }

        IReadOnlyList<StoredAdoption> before = await coefficients.Adoptions(siteId, cancel);
        string? inUse = before.Count > 0 ? before[0].SetName : null;
        if (inUse == set?.Name)
        {
            return new AdoptionResult.InUse();
        }

        // What was in use once is restored without asking: somebody decided it then.
        bool isNew = !isDefault && before.All(adoption => adoption.SetName != name);
        if (isNew && decision.OverrideReason is null && Doubt(set!, inUse) is { } doubt)
        {
            return new AdoptionResult.NotShownBetter(set!, doubt, inUse);
        }

        StoredAdoption adoption = new(siteId, set?.Name, clock.NowInMilliseconds(), decision.AdoptedBy, decision.OverrideReason ?? decision.Reason);
        await coefficients.Adopt(adoption, cancel);
        return new AdoptionResult.Adopted(adoption);
    }

    /// <summary>What speaks against a set that never was in use; null where nothing does.</summary>
    private KeptVerdict? Doubt(StoredCoefficientSet set, string? inUse) =>
        set.ReportJson is { } report && form.Verdict(report) is var verdict
            && (verdict.Kind != VerdictKind.BetterThanCurrent || verdict.ComparedWith != inUse)
            ? verdict
            : null;
}
