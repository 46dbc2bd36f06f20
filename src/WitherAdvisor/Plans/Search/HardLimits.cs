using WitherAdvisor.Sites;

namespace WitherAdvisor.Plans.Search;

/// <summary>The limits that are never traded away. A plan that breaks one is the least bad one, and says so.</summary>
internal static class HardLimits
{
    /// <summary>Leaf reddens above this (published: UPASI Tea Research Foundation).</summary>
    public const double LeafCeilingC = WitherStyle.HighestPlenumC;

    /// <summary>A plan may stop this far from the target (wet basis) and no further; site practice, nothing published.</summary>
    public const double TargetToleranceWetBasis = 0.03;

    /// <summary>Held in the search, whose beds are cut more coarsely than the plan that is shown.</summary>
    private const double SearchedToleranceWetBasis = 0.025;

    /// <summary>The site's ceiling, held under the published one.</summary>
    public static double PlenumCeilingC(WitherStyle style) => Math.Min(style.PlenumCeilingC, WitherStyle.HighestPlenumC);

    /// <summary>The warmest plenum that a plan asks for: the ceiling less what thermometers and hot spots may hide.</summary>
    public static double SetPointCeilingC(WitherStyle style) => PlenumCeilingC(style) - style.PlenumMarginK;

    /// <summary>Ceiling of the hygrometric difference (K) by heat at an hour, given when the surface stage ends.</summary>
    public static double DifferenceCeilingK(WitherStyle style, double hour, double surfaceEndHour) =>
        hour < surfaceEndHour
            ? Math.Max(style.WetLeafHygrometricDifferenceCeilingK, style.HygrometricDifferenceCeilingK)
            : style.HygrometricDifferenceCeilingK;

    /// <summary>Moisture, wet basis, at which leaf that has no time left may be called ready.</summary>
    public static double WettestReadyWetBasis(WitherStyle style) => style.TargetMoistureWetBasis + SearchedToleranceWetBasis;

    /// <summary>Whether a plan may stop at a moisture, as the search holds it.</summary>
    public static bool IsNearTarget(PlanProblem problem, double moistureWetBasis) =>
        Math.Abs(moistureWetBasis - problem.Style.TargetMoistureWetBasis) <= SearchedToleranceWetBasis;
}
