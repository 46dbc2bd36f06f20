using WitherAdvisor.Air;
using WitherAdvisor.Ambient;
using WitherAdvisor.Coefficients;
using WitherAdvisor.Leaf;
using WitherAdvisor.Plans.Search;
using WitherAdvisor.Sites;

namespace WitherAdvisor.Tests.Plans.Search;

/// <summary>An ordinary problem, and nights made to measure for the parts of the planner.</summary>
internal static class MadeProblem
{
    public const double PressurePa = 84_556;

    /// <summary>18 °C and 85 % all night.</summary>
    public static AmbientForecast Ordinary { get; } = Of(26, _ => Air(18, 0.85));

    public static PlanProblem In(AmbientForecast night, WitherStyle? style = null) => new(
        new LeafState(0.775, 0.05), 28, new Trough(41, 0.25, 0.4), style ?? WitherStyle.Short, HeatSupply.Plenty(Site.UsualHotAirC), night, new WitherCoefficients(),
        2, 20, null);

    public static AmbientForecast Of(int hours, Func<int, AirState> air) => new([.. Enumerable.Range(0, hours + 1).Select(air)]);

    public static AirState Air(double dryBulbC, double relativeHumidity) => AirState.FromRelativeHumidity(dryBulbC, relativeHumidity, PressurePa);

    /// <summary>Air of so much hygrometric difference, K, whose dry bulb stays under 35 °C.</summary>
    public static AirState Differing(double differenceK) => HotAirMix.PlenumForHygrometricDifference(Air(16, 0.999), differenceK);
}
