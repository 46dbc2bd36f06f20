using WitherAdvisor.Outcomes;

namespace WitherAdvisor.Loft.Outcomes;

/// <summary>What of an outcome cannot be.</summary>
/// <param name="Place">Where it shows.</param>
public abstract record OutcomeFault(OutcomePlace Place)
{
    public sealed record HeavierThanGreen(double WitheredKg, double GreenKg) : OutcomeFault(new OutcomePlace(OutcomeTerm.WitheredWeight));

    /// <summary>More water cannot have left than there was.</summary>
    /// <param name="DryKg">Least dry matter that was in the green leaf.</param>
    public sealed record LighterThanDryMatter(double WitheredKg, double DryKg) : OutcomeFault(new OutcomePlace(OutcomeTerm.WitheredWeight));

    public sealed record AfterUnloading(OutcomePlace Place, double Hour, double HoursOnTrough) : OutcomeFault(Place);

    /// <summary>The site has no such scale.</summary>
    /// <param name="Scales">Those that the site has.</param>
    public sealed record UnknownScale(OutcomePlace Place, string Scale, IReadOnlyList<TasterScale> Scales) : OutcomeFault(Place);

    public sealed record OffScale(OutcomePlace Place, double Mark, TasterScale Scale) : OutcomeFault(Place);

    public sealed record ScaleTwice(OutcomePlace Place, string Scale) : OutcomeFault(Place);
}
