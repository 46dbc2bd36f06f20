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
    private const string KindName = "kind";

    private static readonly string GoodRows = JsonNamingPolicy.SnakeCaseLower.ConvertName(nameof(KeptRows.GoodRows));

    private static readonly string Observed = JsonNamingPolicy.SnakeCaseLower.ConvertName(nameof(WeatherKind.Observed));

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
        DateTimeOffset? latest = context.Request.Query[KindName] == Observed
            ? ObservedTimes.Latest(context.RequestServices.GetRequiredService<TimeProvider>())
            : null;
        Refusable<CsvTable> read = MediaTypeDoor.IsCsv(context.Request) ? CsvReadings.Read(bytes.Value, keep, latest) : OfJson(bytes.Value, keep, latest);
        return read.Refusal is null ? new(read.Value, null) : new(null, read.Refusal);
    }

    public static void PopulateMetadata(ParameterInfo parameter, EndpointBuilder builder) =>
        builder.Metadata.Add(new AcceptsMetadata([MediaTypeDoor.Json, MediaTypeDoor.Csv], typeof(IReadOnlyList<ReadingRequest>)));

    private static Refusable<CsvTable> OfJson(byte[] utf8, KeptRows keep, DateTimeOffset? latest)
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

        List<FieldError> wrong =
        [
            .. RepeatedTimes.In(read.Value, ""),
            .. read.Value.Select((reading, at) => ObservedTimes.Check(FieldPath.Join(FieldPath.Item("", at), "time"), reading.Time, latest)).OfType<FieldError>(),
        ];
        return wrong.Count > 0 ? new(null, Problem.InvalidInput(wrong)) : new(new(read.Value, []), null);
    }
}
