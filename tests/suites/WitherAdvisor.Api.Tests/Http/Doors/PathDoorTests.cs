using WitherAdvisor.Api.Tests.Testing;

namespace WitherAdvisor.Api.Tests.Http.Doors;

public sealed class PathDoorTests(RunningService service)
{
    [Theory]
    [InlineData("/v1/sites/a%0Ab")]
    [InlineData("/v1/batches/%1F")]
    [InlineData("/v1/batches/%C2%85")]
    [InlineData("/batches/%7F")]
    [InlineData("/v1/sites/%25zz")]
    public async Task A_path_that_is_no_text_is_refused_by_a_problem(string path) =>
        (await service.Caller.Get(path)).ExpectProblem(400, "urn:witheradvisor:problem:bad-path");

    [Theory]
    [InlineData("/v1/sites/caf%C3%A9")]
    [InlineData("/v1/sites/%3Cscript%3E")]
    public async Task Any_text_is_looked_up(string path) => Assert.NotEqual(
        "urn:witheradvisor:problem:bad-path", (string?)(await service.Caller.Get(path)).Expect(404).Json["type"]);
}
