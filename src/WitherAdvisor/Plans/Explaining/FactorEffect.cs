namespace WitherAdvisor.Plans.Explaining;

/// <summary>How the plan would differ without one factor, the same hygrometric difference held: that plan minus this one.</summary>
/// <param name="Code">snake_case name, for example "without_surface_water" or "at_sea_level".</param>
/// <param name="HoursChange">Hours to the stop; null where the target would not be reached in time.</param>
/// <param name="PlenumDryBulbChangeK">Plenum dry bulb at the start of the main stage, K; null likewise.</param>
/// <param name="TurnIntervalHours">Whole hours between turns: in advice kept from before turns were counted; null since.</param>
/// <param name="Turns">The turns it would take; null where the target would not be reached in time.</param>
public sealed record FactorEffect(
    string Code, double? HoursChange, double? PlenumDryBulbChangeK, int? TurnIntervalHours = null, int? Turns = null);
