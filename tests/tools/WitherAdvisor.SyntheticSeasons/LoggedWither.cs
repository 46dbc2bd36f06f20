using WitherAdvisor.Recalibration;

namespace WitherAdvisor.SyntheticSeasons;

/// <summary>A wither as the factory's log has it, beside what is true of it.</summary>
/// <param name="Noted">What the log has.</param>
/// <param name="ReadyHour">When it truly came to its target; null where it never would.</param>
/// <param name="GrosslyWrong">Whether a number of it was written down grossly wrong.</param>
public sealed record LoggedWither(ObservedWither Noted, double? ReadyHour, bool GrosslyWrong);
