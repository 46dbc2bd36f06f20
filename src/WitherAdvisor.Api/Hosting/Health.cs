using Microsoft.AspNetCore.Http.HttpResults;
using WitherAdvisor.Loft.Advising;
using WitherAdvisor.Loft.Kept.Sites;

namespace WitherAdvisor.Api.Hosting;

/// <summary>Tells whoever watches whether the service can do its work.</summary>
internal static class Health
{
    public static void MapHealth(this WebApplication app) => app.MapGet("/health", GetHealth).WithTags("Health");

    /// <summary>Whether the service and its store answer.</summary>
    private static async Task<Ok<HealthResponse>> GetHealth(ISiteStore store, CancellationToken cancel)
    {
        await store.ListSites(cancel);
        return TypedResults.Ok(new HealthResponse { Status = "ok", ModelVersion = ModelVersion.Current });
    }
}
