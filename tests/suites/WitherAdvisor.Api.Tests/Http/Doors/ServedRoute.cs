using System.Text.RegularExpressions;
using Microsoft.AspNetCore.Routing;
using Microsoft.Extensions.DependencyInjection;
using WitherAdvisor.Api.Tests.Testing;

namespace WitherAdvisor.Api.Tests.Http.Doors;

/// <summary>A route as the service maps it, with a word in place of each name in its path.</summary>
internal sealed record ServedRoute(HttpMethod Method, string Path)
{
    /// <summary>All of them, so that no test has to be told of a new one.</summary>
    public static IReadOnlyList<ServedRoute> All(RunningService service)
    {
        List<ServedRoute> all = [.. service.Services.GetRequiredService<EndpointDataSource>().Endpoints
            .OfType<RouteEndpoint>()
            .SelectMany(route => Methods(route).Select(method => new ServedRoute(method, PathOf(route)))).Distinct()];
        Assert.True(all.Count > 60, $"Only {all.Count} routes were found.");
        return all;
    }

    public static IReadOnlyList<ServedRoute> Changes(RunningService service) =>
        [.. All(service).Where(route => route.Method != HttpMethod.Get && route.Method != HttpMethod.Head)];

    private static IEnumerable<HttpMethod> Methods(RouteEndpoint route) =>
        (route.Metadata.GetMetadata<HttpMethodMetadata>()?.HttpMethods ?? ["GET"]).Select(method => new HttpMethod(method));

    private static string PathOf(RouteEndpoint route) => "/" + Regex.Replace(
        route.RoutePattern.RawText!.Replace("{documentName}", "v1", StringComparison.Ordinal), "{[^}]+}", "nowhere", RegexOptions.NonBacktracking).TrimStart('/');
}
