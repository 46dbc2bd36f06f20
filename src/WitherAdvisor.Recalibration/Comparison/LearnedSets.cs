using WitherAdvisor.Coefficients;
using WitherAdvisor.Recalibration.Fitting;

namespace WitherAdvisor.Recalibration.Comparison;

/// <summary>Sets that follow from what was learned.</summary>
internal static class LearnedSets
{
    /// <summary>The site's with each group's offsets.</summary>
    public static ValidatedSet ByGroup(SiteLearned learned, WitherCoefficients prior) => new(
        learned.Set(prior),
        [.. learned.Posterior.Model.Groups.Select((_, group) => (learned.Offset(group, 0).Value, learned.Offset(group, 1).Value))]);

    /// <summary>One group's own, within the ranges.</summary>
    public static WitherCoefficients OfGroup(SiteLearned learned, int group, WitherCoefficients site)
    {
        Coefficient cuticle = learned.Fitted(FittedCoefficient.Cuticle).Coefficient;
        Coefficient moisture = learned.Fitted(FittedCoefficient.DroughtMoisture).Coefficient;
        return site with
        {
            Spreads = LearnedSpreads.OfGroup(learned, group, site.Spreads),
            CuticularConductanceMPerS = Math.Clamp(site.CuticularConductanceMPerS * Math.Exp(learned.Offset(group, 0).Value), cuticle.Low, cuticle.High),
            DroughtMoistureWetBasis = Math.Clamp(
                site.DroughtMoistureWetBasis + learned.Offset(group, 1).Value, moisture.Low, moisture.High),
        };
    }
}
