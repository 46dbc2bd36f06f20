using WitherAdvisor.Ambient;

namespace WitherAdvisor.Plans;

/// <summary>What a trial holds. Hours count from loading.</summary>
/// <param name="Surface">Air of the surface stage.</param>
/// <param name="Main">Air from then on.</param>
/// <param name="TurnIntervalHours">Hours between turns; infinite for none.</param>
/// <param name="TargetDryBasis">Water at which the leaf is ready, kg per kg dry matter.</param>
/// <param name="RunAtLeastTo">Go on to this hour even when the target is reached before.</param>
/// <param name="Horizon">Give up at this hour.</param>
/// <param name="BreakOffSpreadWetBasis">Break off when the spread passes this; infinite for never.</param>
/// <param name="SurfaceEndHour">The hour by the clock at which the surface stage ends; null to end it when the surface water is gone.</param>
/// <param name="LastTurnHour">From which turns are counted. One that is overdue is done first.</param>
internal sealed record TrialSchedule(
    PlenumSchedule Surface,
    PlenumSchedule Main,
    double TurnIntervalHours,
    double TargetDryBasis,
    double RunAtLeastTo,
    double Horizon,
    double BreakOffSpreadWetBasis = double.PositiveInfinity,
    double? SurfaceEndHour = null,
    double LastTurnHour = 0);
