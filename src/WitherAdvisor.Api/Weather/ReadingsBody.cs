using System.Reflection;
using Microsoft.AspNetCore.Http.Metadata;
using WitherAdvisor.Api.Http;
using WitherAdvisor.Api.Input;

namespace WitherAdvisor.Api.Weather;

/// <summary>Readings sent as a JSON array or as CSV; all of them are good or none is taken.</summary>
internal sealed class ReadingsBody(IReadOnlyList<ReadingInput>? readings, ProblemResult? refusal)
    : Refusable<IReadOnlyList<ReadingInput>>(readings, refusal),
        IBindableFromHttpContext<ReadingsBody>, IEndpointParameterMetadataProvider
{
    public const string Json = "application/json";
    public const string Csv = "text/csv";

    public static async ValueTask<ReadingsBody?> BindAsync(HttpContext context, ParameterInfo parameter)
    {
        Refusable<byte[]> bytes = await BodyBytes.Read(context.Request, context.RequestAborted);
        if (bytes.Refusal is { } tooLarge)
        {
            return new(null, tooLarge);
        }

        bool isCsv = context.Request.ContentType?.StartsWith(Csv, StringComparison.OrdinalIgnoreCase) == true;
        Refusable<IReadOnlyList<ReadingInput>> read =
            isCsv ? CsvReadings.Read(bytes.Value) : InputReader.Read<IReadOnlyList<ReadingInput>>(bytes.Value);
        return read.Refusal is null ? OfDistinctTimes(read.Value) : new(null, read.Refusal);
    }

    public static void PopulateMetadata(ParameterInfo parameter, EndpointBuilder builder) =>
        builder.Metadata.Add(new AcceptsMetadata([Json, Csv], typeof(IReadOnlyList<ReadingInput>)));

    private static ReadingsBody OfDistinctTimes(IReadOnlyList<ReadingInput> readings)
    {
        List<FieldError> repeated = [.. RepeatedTimes.In(readings, "")];
        return repeated.Count > 0 ? new(null, Problem.InvalidInput(repeated)) : new(readings, null);
    }
}
