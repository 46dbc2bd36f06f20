using Microsoft.AspNetCore.Hosting;
using Microsoft.Extensions.Configuration;
using WitherAdvisor.Api.Http.Doors;
using WitherAdvisor.Api.Tests.Testing;

namespace WitherAdvisor.Api.Tests.Http.Doors;

/// <summary>A page of another site has a browser send what it likes; nothing of it is taken.</summary>
public sealed class OriginDoorTests(RunningService service)
{
    private const string ForeignOrigin = "urn:witheradvisor:problem:foreign-origin";
    private const string Stranger = "https://stranger.example";

    [Fact]
    public async Task No_change_is_taken_from_a_page_of_another_origin()
    {
        foreach (ServedRoute route in ServedRoute.Changes(service))
        {
            Reply fetched = await Send(route.Method, route.Path, ("Origin", Stranger), ("Sec-Fetch-Site", "cross-site"));
            Assert.True(fetched.Status == 403, $"{route}: {fetched.Status}");
            Reply older = await Send(route.Method, route.Path, ("Origin", Stranger));
            Assert.True(older.Status == 403, $"{route} without Sec-Fetch-Site: {older.Status}");
        }
    }

    [Theory]
    [InlineData("Origin", Stranger)]
    [InlineData("Origin", "null")]
    [InlineData("Origin", "https://localhost")]
    [InlineData("Origin", "http://localhost:8081")]
    [InlineData("Origin", "http://localhost.stranger.example")]
    [InlineData("Sec-Fetch-Site", "cross-site")]
    [InlineData("Sec-Fetch-Site", "same-site")]
    public async Task A_refused_change_is_told_what_it_gave_and_changes_nothing(string header, string value)
    {
        TestLoft loft = await TestLoft.Open(service);
        using HttpClient client = service.CreateClient();
        client.DefaultRequestHeaders.TryAddWithoutValidation(header, value);

        Reply reply = (await new Caller(client).Put(loft.Path + "/troughs/t9", Bodies.Trough())).ExpectProblem(403, ForeignOrigin);

        Assert.Contains($"{header} is {value}; allowed is ", (string)reply.Json["detail"]!, StringComparison.Ordinal);
        (await loft.Caller.Get(loft.Path + "/troughs/t9")).Expect(404);
    }

    [Theory]
    [InlineData("Origin", "http://localhost")]
    [InlineData("Sec-Fetch-Site", "same-origin")]
    [InlineData("Sec-Fetch-Site", "none")]
    public async Task Our_own_pages_and_the_person_at_the_browser_may_change_things(string header, string value)
    {
        TestLoft loft = await TestLoft.Open(service);
        using HttpClient client = service.CreateClient();
        client.DefaultRequestHeaders.Add(header, value);
        (await new Caller(client).Put(loft.Path + "/troughs/t9", Bodies.Trough())).Expect(201);
    }

    [Fact]
    public async Task Reading_is_never_refused_for_where_it_comes_from()
    {
        foreach (string path in new[] { "/", "/health", "/v1/sites", "/v1/model-card", "/openapi/v1.json" })
        {
            (await Send(HttpMethod.Get, path, ("Origin", Stranger), ("Sec-Fetch-Site", "cross-site"))).Expect(200);
        }
    }

    [Theory]
    [InlineData("https://loft.example", 404)]
    [InlineData("http://localhost", 404)]
    [InlineData("https://other.example", 403)]
    public async Task The_operator_may_name_the_origin_that_a_proxy_serves(string origin, int status)
    {
        await using var told = service.Told(OriginRule.Key, "https://loft.example");
        using HttpClient client = told.CreateClient();
        client.DefaultRequestHeaders.Add("Origin", origin);
        (await new Caller(client).Post("/v1/advice/nowhere/replay")).Expect(status);
    }

    [Theory]
    [InlineData("*")]
    [InlineData("null")]
    [InlineData("loft.example")]
    [InlineData("https://loft.example/")]
    public void What_is_no_origin_stops_the_start_and_says_why(string configured)
    {
        IConfiguration told = new ConfigurationBuilder().AddInMemoryCollection([new(OriginRule.Key, configured)]).Build();
        Assert.Contains($"'{configured}'", Assert.Throws<InvalidOperationException>(() => OriginRule.From(told)).Message, StringComparison.Ordinal);
    }

    private async Task<Reply> Send(HttpMethod method, string path, params (string Name, string Value)[] headers)
    {
        using HttpClient client = service.CreateClient();
        foreach ((string name, string value) in headers)
        {
            client.DefaultRequestHeaders.Add(name, value);
        }

        return await new Caller(client).Send(method, path, null);
    }
}
