using System.Reflection;
using System.Text.Json;
using Microsoft.AspNetCore.Http.Metadata;
using WitherAdvisor.Api.Http;
using WitherAdvisor.Fields;

namespace WitherAdvisor.Api.Weather;

/// <summary>Readings sent as a JSON array or as CSV. All of them are good or none is taken, unless the query keeps the good rows of CSV.</summary>
internal sealed class ReadingsBody(CsvTable? readings, ProblemResult? refusal)
    : Refusable<CsvTable>(readings, refusal), IBindableFromHttpContext<ReadingsBody>, IEndpointParameterMetadataProvider
{
    private const string KeepName = "keep";

    private static readonly string GoodRows = JsonNamingPolicy.SnakeCaseLower.ConvertName(nameof(KeptRows.GoodRows));

    public static async ValueTask<ReadingsBody?> BindAsync(HttpContext context, ParameterInfo parameter)
    {
        if (MediaTypeDoor.Refuse(context.Request, MediaTypeDoor.Json, MediaTypeDoor.Csv) is { } foreign)
        {
            return new(null, foreign);
        }

        Refusable<byte[]> bytes = await BodyBytes.Read(context.Request, context.RequestAborted);
        if (bytes.Refusal is { } tooLarge)
        {
            return new(null, tooLarge);
        }

        KeptRows keep = context.Request.Query[KeepName] == GoodRows ? KeptRows.GoodRows : KeptRows.AllOrNone;
        Refusable<CsvTable> read = MediaTypeDoor.IsCsv(context.Request) ? CsvReadings.Read(bytes.Value, keep) : OfJson(bytes.Value, keep);
        return read.Refusal is null ? new(read.Value, null) : new(null, read.Refusal);
    }

    public static void PopulateMetadata(ParameterInfo parameter, EndpointBuilder builder) =>
        builder.Metadata.Add(new AcceptsMetadata([MediaTypeDoor.Json, MediaTypeDoor.Csv], typeof(IReadOnlyList<ReadingRequest>)));

    private static Refusable<CsvTable> OfJson(byte[] utf8, KeptRows keep)
    {
        if (keep == KeptRows.GoodRows)
        {
            return new(null, Problem.InvalidInput(FieldError.Of(KeepName, GoodRows, "all_or_none with a JSON body; good_rows is for CSV")));
        }

        Refusable<IReadOnlyList<ReadingRequest>> read = InputReader.Read<IReadOnlyList<ReadingRequest>>(utf8);
        if (read.Refusal is { } refusal)
        {
            return new(null, refusal);
        }

        List<FieldError> repeated = [.. RepeatedTimes.In(read.Value, "")];
        return repeated.Count > 0 ? new(null, Problem.InvalidInput(repeated)) : new(new(read.Value, []), null);
    }
}
