using WitherAdvisor.Air;
using WitherAdvisor.ReferenceChecks.Cases;

namespace WitherAdvisor.ReferenceChecks.Runners;

internal static class Formulations
{
    /// <summary>The formulation that a case names; the library's default where it names none.</summary>
    public static MoistAirFormulation Of(Inputs inputs) => !inputs.Has("formulation") ? MoistAirFormulation.RealGas
        : inputs.Text("formulation") switch
        {
            "real_gas" => MoistAirFormulation.RealGas,
            "ideal_gas" => MoistAirFormulation.IdealGas,
            string other => throw new InvalidDataException($"unknown formulation {other}"),
        };
}
