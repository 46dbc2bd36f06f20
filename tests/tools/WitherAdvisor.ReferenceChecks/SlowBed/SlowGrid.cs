namespace WitherAdvisor.ReferenceChecks.SlowBed;

/// <summary>How finely the slow solver cuts.</summary>
/// <param name="Nodes">Heights at which leaf is followed, both faces among them; odd.</param>
/// <param name="StepsPerHour">Steps in time.</param>
public sealed record SlowGrid(int Nodes, int StepsPerHour);
