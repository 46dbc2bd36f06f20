namespace WitherAdvisor.Advice.Planning;

/// <summary>Plenum air held to an hour from loading.</summary>
internal sealed record HeldStretch(double ToHour, HeldAir Air);
