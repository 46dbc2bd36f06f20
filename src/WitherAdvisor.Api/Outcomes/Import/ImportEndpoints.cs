using Microsoft.AspNetCore.Http.HttpResults;
using WitherAdvisor.Api.Http;

namespace WitherAdvisor.Api.Outcomes.Import;

/// <summary>Route of the import of past withers.</summary>
internal static class ImportEndpoints
{
    public static void MapOutcomeImport(this RouteGroupBuilder v1) => v1.MapGroup("").WithTags("Outcomes")
        .MapPost("sites/{site}/outcomes/import", PostImport)
        .Produces<ProblemResponse>(StatusCodes.Status409Conflict);

    /// <summary>
    /// Imports a log of past withers as CSV, by the columns of the data dictionary, or previews the result row by
    /// row. Times without offset are the site's. The same file twice adds nothing; what is kept already is never changed.
    /// </summary>
    private static async Task<Results<Ok<ImportResponse>, ProblemResult>> PostImport(
        string site, Query<ImportQuery> query, SpooledCsv body, CsvImport import, CancellationToken cancel)
    {
        Imported imported = await import.Run(site, body.Value, query.Value, RowWording.OfRequests, cancel);
        return imported.Answer is { } answer ? TypedResults.Ok(answer) : imported.Refusal!;
    }
}
