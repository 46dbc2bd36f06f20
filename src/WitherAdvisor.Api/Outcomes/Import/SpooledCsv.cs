using System.Reflection;
using Microsoft.AspNetCore.Http.Features;
using Microsoft.AspNetCore.Http.Metadata;
using WitherAdvisor.Api.Http;

namespace WitherAdvisor.Api.Outcomes.Import;

/// <summary>
/// A CSV body laid down in a temporary file before anything is done with it: a slow sender must not hold up whoever
/// else wants to write, and a long log must not stand in memory.
/// </summary>
internal sealed class SpooledCsv(Stream? csv, ProblemResult? refusal)
    : Refusable<Stream>(csv, refusal), IBindableFromHttpContext<SpooledCsv>, IEndpointParameterMetadataProvider
{
    /// <summary>Some hundred thousand rows; a longer log is exported and imported by stretches of time.</summary>
    public const int Most = 64 * 1024 * 1024;

    public static async ValueTask<SpooledCsv?> BindAsync(HttpContext context, ParameterInfo parameter)
    {
        if (MediaTypeDoor.Refuse(context.Request, MediaTypeDoor.Csv) is { } foreign)
        {
            return new(null, foreign);
        }

        if (context.Features.Get<IHttpMaxRequestBodySizeFeature>() is { IsReadOnly: false } limit)
        {
            limit.MaxRequestBodySize = Most + 1;
        }

        if (context.Request.ContentLength > Most)
        {
            return new(null, Problem.TooLarge(Most));
        }

#pragma warning disable CA2000 // the response disposes of it
        FileStream file = Temporary();
#pragma warning restore CA2000
        context.Response.RegisterForDisposeAsync(file);
        return await Spool(context.Request.Body, file, context.RequestAborted) ? new(file, null) : new(null, Problem.TooLarge(Most));
    }

    public static void PopulateMetadata(ParameterInfo parameter, EndpointBuilder builder) =>
        builder.Metadata.Add(new AcceptsMetadata([MediaTypeDoor.Csv], typeof(string)));

    private static async Task<bool> Spool(Stream body, FileStream file, CancellationToken cancel)
    {
        byte[] part = new byte[64 * 1024];
        int read;
        while ((read = await body.ReadAsync(part, cancel)) > 0)
        {
            if (file.Length + read > Most)
            {
                return false;
            }

            await file.WriteAsync(part.AsMemory(0, read), cancel);
        }

        file.Position = 0;
        return true;
    }

    private static FileStream Temporary() => new(
        Path.Combine(Path.GetTempPath(), Path.GetRandomFileName()),
        new FileStreamOptions
        {
            Mode = FileMode.CreateNew,
            Access = FileAccess.ReadWrite,
            Options = FileOptions.DeleteOnClose | FileOptions.Asynchronous,
        });
}
