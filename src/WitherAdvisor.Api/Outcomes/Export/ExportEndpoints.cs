using WitherAdvisor.Api.Http;
using WitherAdvisor.Api.Outcomes.Log;
using WitherAdvisor.Loft.Kept.Outcomes;
using WitherAdvisor.Loft.Kept.Sites;

namespace WitherAdvisor.Api.Outcomes.Export;

/// <summary>Routes of the log of outcomes and of what its columns mean.</summary>
internal static class ExportEndpoints
{
    public static void MapOutcomeExport(this RouteGroupBuilder v1)
    {
        RouteGroupBuilder outcomes = v1.MapGroup("").WithTags("Outcomes");
        outcomes.MapGet("outcomes/dictionary", GetDictionary);
        outcomes.MapGet("sites/{site}/outcomes/export", GetExport)
            .Produces<string>(StatusCodes.Status200OK, "text/csv", ParquetExport.ContentType);
    }

    /// <summary>The columns of the log: type, unit, meaning and range of each.</summary>
    private static List<ColumnAnswer> GetDictionary() => [.. LogColumn.All.Select(ColumnAnswer.Of)];

    /// <summary>
    /// The log of a site by loading, each batch with what came of it and the last advice given for it. It is sent row by
    /// row, however long; as CSV it can be imported again without loss.
    /// </summary>
    private static async Task<IResult> GetExport(
        string site, Query<ExportQuery> query, ISiteStore sites, IOutcomeStore store, CancellationToken cancel)
    {
        if (await sites.FindSite(site, cancel) is not { } found)
        {
            return Problem.Unknown("site", site);
        }

        (string type, string ending) = query.Value.Format == ExportFormat.Csv ? (CsvExport.ContentType, "csv") : (ParquetExport.ContentType, "parquet");
        IAsyncEnumerable<LogRow> rows = LogExport.Rows(found, store, query.Value, cancel);
        return TypedResults.Stream(body => LogExport.Write(rows, query.Value.Format, body, cancel), type, $"{site}-outcomes.{ending}");
    }
}
