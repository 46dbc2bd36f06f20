namespace WitherAdvisor.Plans.Explaining;

/// <summary>What a weight outside the expected band means.</summary>
/// <param name="ReadyHour">When such leaf is expected to be ready with the plan's air kept on, hours from loading; null where it would not be.</param>
/// <param name="PlenumDryBulbChangeK">Change of plenum dry bulb that would bring it back to the planned stop, K, within the limits; null where none within them would, or it comes too late to be worth making.</param>
public sealed record CheckResponse(double? ReadyHour, double? PlenumDryBulbChangeK);
