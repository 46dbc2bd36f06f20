using Microsoft.AspNetCore.Http.HttpResults;
using WitherAdvisor.Coefficients;
using WitherAdvisor.Words.Model;

namespace WitherAdvisor.Api.Coefficients;

/// <summary>Routes of coefficients.</summary>
internal static class CoefficientEndpoints
{
    public static void MapCoefficients(this RouteGroupBuilder v1) =>
        v1.MapGet("/coefficients", GetCoefficients).WithTags("Coefficients");

    /// <summary>The coefficients that a request may set, each with its default, range, status and source.</summary>
    private static Ok<CoefficientsResponse> GetCoefficients() => TypedResults.Ok(new CoefficientsResponse
    {
        SetName = new WitherCoefficients().SetName,
        Coefficients = [.. CoefficientField.All.Select(Answer)],
    });

    private static CoefficientResponse Answer(CoefficientField field) => new()
    {
        Name = field.Field.Name,
        Symbol = field.Coefficient.Symbol,
        Unit = field.Range.Unit!,
        Value = field.Shown(field.Coefficient.Default),
        Least = field.Range.Least,
        Most = field.Range.Most,
        Status = field.Coefficient.Status,
        Source = field.Coefficient.Source,
        Effect = CoefficientWording.Effect(field.Coefficient.Name),
    };
}
