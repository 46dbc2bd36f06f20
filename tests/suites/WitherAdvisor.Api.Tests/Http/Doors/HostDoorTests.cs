using System.Net;
using Microsoft.AspNetCore.Hosting;
using Microsoft.Extensions.Configuration;
using WitherAdvisor.Api.Http.Doors;
using WitherAdvisor.Api.Tests.Testing;

namespace WitherAdvisor.Api.Tests.Http.Doors;

/// <summary>A web site whose name points at this machine is not this service.</summary>
public sealed class HostDoorTests(RunningService service)
{
    private const string UnknownHost = "urn:witheradvisor:problem:unknown-host";

    [Theory]
    [InlineData("localhost")]
    [InlineData("LOCALHOST:5080")]
    [InlineData("127.0.0.1:5080")]
    [InlineData("127.9.8.7")]
    [InlineData("[::1]:5080")]
    public async Task This_machine_is_known_by_its_own_names(string host) => (await Get("/health", host)).Expect(200);

    [Theory]
    [InlineData("rebound.example")]
    [InlineData("localhost.rebound.example:5080")]
    [InlineData("127.0.0.1.rebound.example")]
    [InlineData("10.0.0.1")]
    [InlineData("0.0.0.0:5080")]
    [InlineData("[2001:db8::1]:5080")]
    public async Task Any_other_name_is_refused_and_the_answer_says_what_to_do(string host)
    {
        Reply reply = (await Get("/health", host)).ExpectProblem(421, UnknownHost);
        string detail = (string)reply.Json["detail"]!;
        Assert.Contains(host, detail, StringComparison.Ordinal);
        Assert.Contains("localhost", detail, StringComparison.Ordinal);
        Assert.Contains("Hosts__Allowed", detail, StringComparison.Ordinal);
    }

    [Fact]
    public async Task No_route_answers_to_a_foreign_name()
    {
        foreach (ServedRoute route in ServedRoute.All(service).Append(new(HttpMethod.Get, "/swagger/index.html")))
        {
            Reply reply = await Send(route.Method, route.Path, "rebound.example");
            Assert.True(reply.Status == (int)HttpStatusCode.MisdirectedRequest, $"{route}: {reply.Status}");
        }
    }

    [Fact]
    public async Task A_page_under_a_foreign_name_sends_no_form()
    {
        Reply reply = await Send(HttpMethod.Post, "/sites/nowhere/batches/new", "rebound.example", ("Origin", "http://rebound.example"));
        reply.ExpectProblem(421, UnknownHost);
    }

    [Theory]
    [InlineData("loft.example", 200)]
    [InlineData("Loft.Example:8080", 200)]
    [InlineData("192.0.2.7", 200)]
    [InlineData("127.0.0.1", 200)]
    [InlineData("other.example", 421)]
    public async Task The_operator_may_name_others(string host, int status)
    {
        await using var told = service.Told(HostNames.Key, "loft.example; 192.0.2.7");
        using HttpClient client = told.CreateClient();
        client.DefaultRequestHeaders.Host = host;
        (await new Caller(client).Get("/health")).Expect(status);
    }

    [Theory]
    [InlineData("*")]
    [InlineData("http://loft.example")]
    [InlineData("loft.example:8080")]
    [InlineData("*.example")]
    public void What_is_no_name_stops_the_start_and_says_why(string configured)
    {
        IConfiguration told = new ConfigurationBuilder().AddInMemoryCollection([new(HostNames.Key + ":0", configured)]).Build();
        string message = Assert.Throws<InvalidOperationException>(() => HostNames.From(told)).Message;
        Assert.Contains($"'{configured}'", message, StringComparison.Ordinal);
        Assert.Contains("without scheme, port or wildcard", message, StringComparison.Ordinal);
    }

    private Task<Reply> Get(string path, string host) => Send(HttpMethod.Get, path, host);

    private async Task<Reply> Send(HttpMethod method, string path, string host, params (string Name, string Value)[] headers)
    {
        using HttpClient client = service.CreateClient();
        client.DefaultRequestHeaders.Host = host;
        foreach ((string name, string value) in headers)
        {
            client.DefaultRequestHeaders.Add(name, value);
        }

        return await new Caller(client).Send(method, path, null);
    }
}
