using WitherAdvisor.Ambient;

namespace WitherAdvisor.Plans;

/// <summary>What a trial holds. Hours count from loading.</summary>
/// <param name="Surface">Air of the surface stage.</param>
/// <param name="Main">Air from then on.</param>
/// <param name="Turns">When the leaf is turned.</param>
/// <param name="TargetDryBasis">Water at which the leaf is ready, kg per kg dry matter.</param>
/// <param name="RunAtLeastTo">Go on to this hour even when the target is reached before.</param>
/// <param name="Horizon">Give up at this hour.</param>
/// <param name="SurfaceEndHour">The hour by the clock at which the surface stage ends; null to end it when the first layer's surface is dry.</param>
/// <param name="Held">Air of leaf that waits.</param>
/// <param name="HeldFromHour">When it begins to wait; infinite for never.</param>
/// <param name="Loading">Air until all leaf is on.</param>
/// <param name="LoadedHour">When all leaf is on; 0 where it comes at once.</param>
internal sealed record TrialSchedule(
    PlenumSchedule Surface,
    PlenumSchedule Main,
    TurnRule Turns,
    double TargetDryBasis,
    double RunAtLeastTo,
    double Horizon,
    double? SurfaceEndHour = null,
    PlenumSchedule? Held = null,
    double HeldFromHour = double.PositiveInfinity,
    PlenumSchedule? Loading = null,
    double LoadedHour = 0);
