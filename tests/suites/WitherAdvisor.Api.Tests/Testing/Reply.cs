using System.Net.Http.Headers;
using System.Text.Json.Nodes;

namespace WitherAdvisor.Api.Tests.Testing;

/// <summary>What came back.</summary>
public sealed record Reply(int Status, string Text, string? ContentType, HttpResponseHeaders Headers)
{
    public JsonNode Json => JsonNode.Parse(Text)!;

    /// <summary>The errors of a problem, by field.</summary>
    public IReadOnlyList<(string Field, string? Given, string Allowed, string Message)> Errors =>
    [
        .. (Json["errors"]?.AsArray() ?? []).Select(error => (
            (string)error!["field"]!, (string?)error["given"], (string)error["allowed"]!, (string)error["message"]!)),
    ];

    /// <summary>Fails with the whole answer, so that a test's log says why.</summary>
    public Reply Expect(int status)
    {
        Assert.True(Status == status, $"Expected {status}, came {Status}: {Text}");
        return this;
    }

    public Reply ExpectProblem(int status, string type)
    {
        Expect(status);
        Assert.Equal("application/problem+json", ContentType);
        Assert.Equal(type, (string?)Json["type"]);
        Assert.Equal(status, (int)Json["status"]!);
        return this;
    }

    public Reply ExpectInvalid(string field)
    {
        ExpectProblem(400, "urn:witheradvisor:problem:invalid-input");
        Assert.True(Errors.Any(error => error.Field == field), $"No error names {field}: {Text}");
        return this;
    }
}
