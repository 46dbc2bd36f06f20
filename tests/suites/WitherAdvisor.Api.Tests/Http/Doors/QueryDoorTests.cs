using WitherAdvisor.Api.Tests.Testing;

namespace WitherAdvisor.Api.Tests.Http.Doors;

public sealed class QueryDoorTests(RunningService service)
{
    [Fact]
    public async Task No_route_takes_a_query_that_it_does_not_know()
    {
        foreach (ServedRoute route in ServedRoute.All(service).Where(route => route.Path.StartsWith("/v1/", StringComparison.Ordinal)))
        {
            Reply reply = await service.Caller.Send(route.Method, route.Path + "?unheard_of=true", null);
            Assert.True(reply.Status == 400 && reply.Errors.Any(error => error.Field == "unheard_of"), $"{route}: {reply.Status} {reply.Text}");
        }
    }

    [Fact]
    public async Task What_the_caller_takes_for_a_dry_run_writes_nothing()
    {
        TestLoft loft = await TestLoft.Open(service);
        string trough = loft.Path + "/troughs/t9";
        (await loft.Caller.Put(trough + "?dry_run=true", Bodies.Trough())).ExpectInvalid("dry_run");
        (await loft.Caller.Get(trough)).Expect(404);
    }
}
