namespace WitherAdvisor.Bed;

/// <summary>Air under the mesh to an hour from loading.</summary>
internal readonly record struct AirLeg(double ToHour, AirByHour Air);
