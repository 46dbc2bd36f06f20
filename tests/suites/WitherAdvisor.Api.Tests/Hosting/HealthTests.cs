using WitherAdvisor.Api.Tests.Testing;

namespace WitherAdvisor.Api.Tests.Hosting;

public sealed class HealthTests(RunningService service)
{
    [Fact]
    public async Task A_running_service_says_that_it_is_well_and_which_model_it_holds()
    {
        Reply reply = (await service.Caller.Get("/health")).Expect(200);
        Assert.Equal("ok", (string?)reply.Json["status"]);
        Assert.Matches(@"^\d+\.\d+\.\d+$", (string)reply.Json["model_version"]!);
    }
}
