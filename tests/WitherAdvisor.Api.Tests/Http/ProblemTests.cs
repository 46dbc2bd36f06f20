using System.Net.Http.Headers;
using WitherAdvisor.Api.Http;
using WitherAdvisor.Api.Tests.Testing;

namespace WitherAdvisor.Api.Tests.Http;

public sealed class ProblemTests(RunningService service)
{
    public static TheoryData<string, string> UnknownThings => new()
    {
        { "/v1/sites/nowhere", "unknown-site" },
        { "/v1/sites/nowhere/troughs", "unknown-site" },
        { "/v1/sites/nowhere/troughs/t", "unknown-trough" },
        { "/v1/sites/nowhere/batches", "unknown-site" },
        { "/v1/sites/nowhere/weather?kind=observed&from=2026-03-01T00:00:00Z&to=2026-03-02T00:00:00Z", "unknown-site" },
        { "/v1/batches/none", "unknown-batch" },
        { "/v1/batches/none/advice", "unknown-batch" },
        { "/v1/advice/none", "unknown-advice" },
        { "/v1/advice/none/request", "unknown-advice" },
    };

    [Theory]
    [MemberData(nameof(UnknownThings))]
    public async Task What_is_not_there_is_told_by_name(string path, string type) =>
        (await service.Caller.Get(path)).ExpectProblem(404, "urn:witheradvisor:problem:" + type);

    [Fact]
    public async Task A_batch_for_an_unknown_site_or_trough_is_not_found()
    {
        TestLoft loft = await TestLoft.Open(service);
        (await loft.Caller.Post("/v1/sites/nowhere/batches", Bodies.BatchOn("trough-1")))
            .ExpectProblem(404, "urn:witheradvisor:problem:unknown-site");
        (await loft.Caller.Post(loft.Path + "/batches", Bodies.BatchOn("trough-9")))
            .ExpectProblem(404, "urn:witheradvisor:problem:unknown-trough");
    }

    [Theory]
    [InlineData("/v1/nothing")]
    [InlineData("/nothing/at/all")]
    public async Task An_unknown_path_is_a_problem_too(string path) =>
        (await service.Caller.Get(path)).ExpectProblem(404, "about:blank");

    [Fact]
    public async Task A_method_that_a_path_does_not_take_is_a_problem_too() =>
        (await service.Caller.Send(HttpMethod.Delete, "/v1/sites", null)).ExpectProblem(405, "about:blank");

    [Theory]
    [InlineData("text/plain")]
    [InlineData("application/x-www-form-urlencoded")]
    [InlineData("text/csv")]
    public async Task A_body_in_another_format_is_a_problem_too(string contentType) =>
        (await service.Caller.PostText("/v1/advice", "x", contentType)).ExpectProblem(415, "urn:witheradvisor:problem:media-type");

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public async Task A_body_that_is_too_large_is_refused_whether_or_not_its_length_is_told(bool told)
    {
        using MemoryStream stream = new(new byte[BodyBytes.Most + 1]);
        using HttpContent content = told ? new ByteArrayContent(stream.ToArray()) : new StreamContent(new Unseekable(stream));
        content.Headers.ContentType = new MediaTypeHeaderValue("application/json");
        (await service.Caller.Send(HttpMethod.Post, "/v1/advice", content))
            .ExpectProblem(413, "urn:witheradvisor:problem:body-too-large");
    }

    [Fact]
    public async Task A_caller_that_accepts_only_HTML_still_gets_the_problem()
    {
        using HttpClient client = service.CreateClient();
        client.DefaultRequestHeaders.Accept.ParseAdd("text/html");
        (await new Caller(client).Get("/v1/sites/nowhere")).ExpectProblem(404, "urn:witheradvisor:problem:unknown-site");
    }

    [Fact]
    public async Task A_problem_names_the_path_that_was_asked()
    {
        Reply reply = await service.Caller.Get("/v1/sites/nowhere");
        Assert.Equal("/v1/sites/nowhere", (string?)reply.Json["instance"]);
    }

    private sealed class Unseekable(Stream inner) : Stream
    {
        public override bool CanRead => true;

        public override bool CanSeek => false;

        public override bool CanWrite => false;

        public override long Length => throw new NotSupportedException();

        public override long Position
        {
            get => throw new NotSupportedException();
            set => throw new NotSupportedException();
        }

        public override void Flush()
        {
        }

        public override int Read(byte[] buffer, int offset, int count) => inner.Read(buffer, offset, count);

        public override long Seek(long offset, SeekOrigin origin) => throw new NotSupportedException();

        public override void SetLength(long value) => throw new NotSupportedException();

        public override void Write(byte[] buffer, int offset, int count) => throw new NotSupportedException();
    }
}
