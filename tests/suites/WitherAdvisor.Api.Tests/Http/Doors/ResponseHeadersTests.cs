using WitherAdvisor.Api.Tests.Testing;

namespace WitherAdvisor.Api.Tests.Http.Doors;

public sealed class ResponseHeadersTests(RunningService service)
{
    [Fact]
    public async Task Every_answer_of_every_route_tells_the_browser_to_guess_nothing_and_frame_nothing()
    {
        IEnumerable<ServedRoute> further =
        [
            new(HttpMethod.Get, "/swagger/index.html"), new(HttpMethod.Get, "/nothing/at/all"), new(HttpMethod.Delete, "/v1/sites"),
            new(HttpMethod.Get, "/v1/sites/%0A"), new(HttpMethod.Get, "/v1/sites?unheard_of=1"),
        ];
        foreach (ServedRoute route in ServedRoute.All(service).Concat(further))
        {
            await Check(route, "localhost");
        }

        await Check(new(HttpMethod.Get, "/"), "rebound.example");
    }

    private async Task Check(ServedRoute route, string host)
    {
        using HttpClient client = service.CreateClient();
        client.DefaultRequestHeaders.Host = host;
        Reply reply = await new Caller(client).Send(route.Method, route.Path, null);
        Assert.True(reply.Status < 500, $"{route}: {reply.Text}");
        Has(route, reply, "X-Content-Type-Options", "nosniff");
        Has(route, reply, "X-Frame-Options", "DENY");
        Has(route, reply, "Referrer-Policy", "same-origin");
        Has(route, reply, "Cross-Origin-Resource-Policy", "same-origin");
        string policy = Assert.Single(reply.Headers.GetValues("Content-Security-Policy"));
        Assert.Contains("frame-ancestors 'none'", policy, StringComparison.Ordinal);
    }

    private static void Has(ServedRoute route, Reply reply, string header, string value) => Assert.True(
        reply.Headers.TryGetValues(header, out IEnumerable<string>? values) && values.SequenceEqual([value]), $"{route} has no {header}: {value}.");
}
