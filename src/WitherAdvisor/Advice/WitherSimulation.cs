namespace WitherAdvisor.Advice;

/// <summary>Runs a wither whose plan the caller fixes.</summary>
public static class WitherSimulation
{
    /// <summary>The bed under a fixed plan; null where no reading of the air has both dry bulb and a humidity.</summary>
    public static SimulationResult? Run(SimulationRequest request) => throw new NotSupportedException();
}
