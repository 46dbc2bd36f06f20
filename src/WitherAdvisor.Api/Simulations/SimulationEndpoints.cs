using Microsoft.AspNetCore.Http.HttpResults;
using WitherAdvisor.Api.Http;
using WitherAdvisor.Fields;
using WitherAdvisor.Simulations;

namespace WitherAdvisor.Api.Simulations;

/// <summary>Routes of simulations.</summary>
internal static class SimulationEndpoints
{
    public static void MapSimulations(this RouteGroupBuilder v1) =>
        v1.MapGroup("/simulations").WithTags("Simulations").MapPost("", PostSimulation);

    /// <summary>What a plan fixed by the caller would do: the curve by layer, the hours, the heat. Nothing is kept.</summary>
    private static Results<Ok<SimulationResponse>, ProblemResult> PostSimulation(Body<PlanSimulationRequest> body) =>
        WitherSimulation.Run(SimulationMapping.ToDomain(body.Value)) is { } result
            ? TypedResults.Ok(SimulationMapping.ToResponse(result, body.Value))
            : Problem.InvalidInput(FieldError.Of("air", $"{body.Value.Air.Count} readings", "at least one with dry_bulb_c and a humidity"));
}
