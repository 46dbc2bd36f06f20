using Microsoft.AspNetCore.Http.HttpResults;
using WitherAdvisor.Api.ModelCard.Responses;

namespace WitherAdvisor.Api.ModelCard;

/// <summary>Route of the model card.</summary>
internal static class ModelCardEndpoints
{
    public static void MapModelCard(this RouteGroupBuilder v1) =>
        v1.MapGet("/model-card", GetModelCard).WithTags("Model card");

    /// <summary>
    /// Model documentation: equations, coefficients, constants, ranges, what the model does not know, the checks it
    /// is held to, and which inputs matter most in wet and in dry weather. A page of the same is at /model.
    /// </summary>
    private static Ok<ModelCardResponse> GetModelCard() => TypedResults.Ok(ModelCardMapping.Card);
}
