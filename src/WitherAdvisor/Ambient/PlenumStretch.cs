namespace WitherAdvisor.Ambient;

/// <summary>Plenum air held to an hour from loading.</summary>
internal sealed record PlenumStretch(double ToHour, PlenumSchedule Air);
