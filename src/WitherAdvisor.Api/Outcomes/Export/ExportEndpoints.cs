using WitherAdvisor.Api.Http;
using WitherAdvisor.LogFiles.Columns;
using WitherAdvisor.LogFiles.Writing;
using WitherAdvisor.Loft.Exporting;

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
    private static List<ColumnResponse> GetDictionary() => [.. LogColumn.All.Select(ColumnResponse.Of)];

    /// <summary>
    /// The log of a site by loading, each batch with its outcome and the last advice given for it. It is sent row by
    /// row, however long; as CSV it can be imported again without loss.
    /// </summary>
    private static async Task<IResult> GetExport(
        string site, Query<ExportQuery> query, LogExport export, CancellationToken cancel)
    {
        if (await export.Of(site, query.Value.ToFilter(), cancel) is not { } log)
        {
            return Problem.Unknown("site", site);
        }

        (string type, string ending) = query.Value.Format == ExportFormat.Csv ? (CsvExport.ContentType, "csv") : (ParquetExport.ContentType, "parquet");
        return TypedResults.Stream(body => LogFileWriting.Write(log, query.Value.Format, body, cancel), type, $"{site}-outcomes.{ending}");
    }
}
