using System.Net.Http.Headers;
using System.Text;
using System.Text.Json.Nodes;
using WitherAdvisor.Api.Tests.Testing;

namespace WitherAdvisor.Api.Tests.Http.Doors;

/// <summary>A body is what it says it is, or is not read.</summary>
public sealed class MediaTypeDoorTests(RunningService service)
{
    private const string MediaType = "urn:witheradvisor:problem:media-type";

    public static TheoryData<string> Forms => [.. RequestForm.All.Select(form => form.Name)];

    [Theory]
    [MemberData(nameof(Forms))]
    public async Task A_body_without_a_type_is_refused(string name)
    {
        Reply reply = (await Send(name, null)).ExpectProblem(415, MediaType);
        Assert.StartsWith("Content-Type is missing; allowed is application/json", (string)reply.Json["detail"]!, StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(Forms))]
    public async Task A_body_in_another_charset_is_refused(string name)
    {
        Reply reply = (await Send(name, "application/json; charset=utf-16")).ExpectProblem(415, MediaType);
        Assert.Contains("utf-16; allowed is application/json", (string)reply.Json["detail"]!, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("application/json")]
    [InlineData("Application/JSON")]
    [InlineData("application/json; charset=utf-8")]
    [InlineData("application/json; charset=\"UTF-8\"")]
    public async Task UTF_8_may_be_said_or_left_out(string type) => (await Send("site", type)).Expect(201);

    [Theory]
    [InlineData("text/plain")]
    [InlineData("application/jsonp")]
    [InlineData("application/x-www-form-urlencoded")]
    [InlineData("multipart/form-data; boundary=x")]
    public async Task What_a_foreign_form_can_send_unasked_is_refused(string type)
    {
        Reply reply = (await Send("site", type)).ExpectProblem(415, MediaType);
        Assert.StartsWith($"Content-Type is {type}", (string)reply.Json["detail"]!, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(null, 415)]
    [InlineData("text/csv; charset=utf-16", 415)]
    [InlineData("text/csvx", 415)]
    [InlineData("text/csv; charset=utf-8", 200)]
    [InlineData("text/csv", 200)]
    public async Task Readings_as_CSV_are_held_to_the_same(string? type, int status)
    {
        TestLoft loft = await TestLoft.Open(service);
        await SendText(loft.Path + "/weather?kind=observed", "time,dry_bulb_c\n2026-02-27T13:00:00+05:30,18\n", type, status);
    }

    [Theory]
    [InlineData(null)]
    [InlineData("text/csv; charset=utf-16")]
    [InlineData("application/json")]
    public async Task So_is_a_log_of_past_withers(string? type) =>
        await SendText("/v1/sites/nowhere/outcomes/import?mode=preview", "a,b\n", type, 415);

    private async Task SendText(string path, string text, string? type, int status)
    {
        using ByteArrayContent content = Content(text, type);
        Reply reply = (await service.Caller.Send(HttpMethod.Post, path, content)).Expect(status);
        if (status == 415)
        {
            reply.ExpectProblem(415, MediaType);
        }
    }

    private async Task<Reply> Send(string name, string? type)
    {
        TestLoft loft = await TestLoft.Open(service);
        RequestForm form = RequestForm.Of(name);
        JsonNode body = DocumentedExamples.Of(await service.Document.Value, form);
        using ByteArrayContent content = Content(body.ToJsonString(), type);
        return await service.Caller.Send(form.Method, await form.Path(loft), content);
    }

    private static ByteArrayContent Content(string text, string? type)
    {
        ByteArrayContent content = new(Encoding.UTF8.GetBytes(text));
        content.Headers.ContentType = type is null ? null : MediaTypeHeaderValue.Parse(type);
        return content;
    }
}
