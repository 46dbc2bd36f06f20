using WitherAdvisor.Bed;
using WitherAdvisor.Leaf;

namespace WitherAdvisor.Plans;

/// <summary>Where a wither stands: what a plan goes on from.</summary>
/// <param name="Bed">The water by layer and the hour since loading.</param>
/// <param name="TurnedHours">Turns that are behind, hours from loading, in order.</param>
/// <param name="Stage">The stage reached. Heat that was taken off for cooling is not put on again.</param>
/// <param name="StageFromHour">When that stage began, hours from loading.</param>
/// <param name="InHand">What is held by the plan so far: it is kept unless a change is worth making. Null at loading, or where nobody knows.</param>
public sealed record WitherState(BedState Bed, IReadOnlyList<double> TurnedHours, StageKind Stage, double StageFromHour, HeldAir? InHand = null)
{
    /// <summary>Leaf just loaded.</summary>
    public static WitherState AtLoading(LeafState leaf) => new(BedState.AtLoading(leaf), [], StageKind.SurfaceDrying, 0);

    /// <summary>Hours since loading.</summary>
    public double Hour => Bed.Hour;

    public bool IsUnderWay => Hour > 0;

    /// <summary>From which the next turn is counted: the last one, else loading.</summary>
    public double LastTurnHour => TurnedHours.Count > 0 ? TurnedHours[^1] : 0;

    /// <summary>The same wither had other leaf been loaded.</summary>
    public WitherState HadItBeen(LeafState leaf) => this with { Bed = Bed.HadItBeen(leaf) };
}
