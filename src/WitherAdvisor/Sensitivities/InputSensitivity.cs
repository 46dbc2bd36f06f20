namespace WitherAdvisor.Sensitivities;

/// <summary>One input moved alone, down and up, and what that does to the hours to target.</summary>
/// <param name="Code">snake_case name, for example "surface_water" or "held_difference".</param>
/// <param name="Reach">How far it was moved.</param>
/// <param name="Unit">Of the three values; "1" for a fraction.</param>
/// <param name="LowValue">Moved down.</param>
/// <param name="PlannedValue">As the plan takes it.</param>
/// <param name="HighValue">Moved up.</param>
/// <param name="PlannedHours">Hours from loading to target at the planned value.</param>
/// <param name="HoursAtLow">The same at the low value; null where the target is not reached.</param>
/// <param name="HoursAtHigh">The same at the high value; null likewise.</param>
/// <param name="NotReachedWithinHours">Where an end has no hours: for how long the air was looked at; null where both have.</param>
public sealed record InputSensitivity(
    string Code,
    SensitivityReach Reach,
    string Unit,
    double LowValue,
    double PlannedValue,
    double HighValue,
    double PlannedHours,
    double? HoursAtLow,
    double? HoursAtHigh,
    int? NotReachedWithinHours)
{
    /// <summary>Hours at the low value, less those of the plan.</summary>
    public double? ChangeAtLowHours => HoursAtLow - PlannedHours;

    /// <summary>Hours at the high value, less those of the plan.</summary>
    public double? ChangeAtHighHours => HoursAtHigh - PlannedHours;

    /// <summary>Hours between the two ends; null where one is not reached.</summary>
    public double? WidthHours => HoursAtHigh is { } high && HoursAtLow is { } low ? Math.Abs(high - low) : null;
}
