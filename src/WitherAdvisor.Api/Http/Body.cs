using System.Reflection;
using Microsoft.AspNetCore.Http.Metadata;

namespace WitherAdvisor.Api.Http;

/// <summary>The JSON body of a request, checked.</summary>
internal sealed class Body<T>(T? value, ProblemResult? refusal)
    : Refusable<T>(value, refusal), IBindableFromHttpContext<Body<T>>, IEndpointParameterMetadataProvider
    where T : class
{
    public static async ValueTask<Body<T>?> BindAsync(HttpContext context, ParameterInfo parameter)
    {
        if (MediaTypeDoor.Refuse(context.Request, MediaTypeDoor.Json) is { } foreign)
        {
            return new(null, foreign);
        }

        Refusable<byte[]> bytes = await BodyBytes.Read(context.Request, context.RequestAborted);
        if (bytes.Refusal is { } tooLarge)
        {
            return new(null, tooLarge);
        }

        Refusable<T> read = InputReader.Read<T>(bytes.Value);
        return read.Refusal is null ? new(read.Value, null) : new(null, read.Refusal);
    }

    public static void PopulateMetadata(ParameterInfo parameter, EndpointBuilder builder) =>
        builder.Metadata.Add(new AcceptsMetadata([MediaTypeDoor.Json], typeof(T)));
}
