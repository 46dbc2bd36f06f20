using WitherAdvisor.Api.Tests.Testing;

namespace WitherAdvisor.Api.Tests.Http;

public sealed class StrictQueryTests(RunningService service)
{
    [Theory]
    [InlineData("1,5")]
    [InlineData("1.5")]
    [InlineData("0")]
    [InlineData("501")]
    [InlineData("NaN")]
    [InlineData("1e999")]
    [InlineData("abc")]
    [InlineData("")]
    [InlineData("%2B5%20")]
    [InlineData("1e1")]
    [InlineData("%2B1")]
    [InlineData("1.0")]
    public async Task A_number_that_does_not_fit_is_refused_with_its_range(string given)
    {
        TestLoft loft = await TestLoft.Open(service);
        Reply reply = await loft.Caller.Get($"{loft.Path}/batches?limit={given}");
        Assert.Equal("a whole number from 1 to 500", reply.ExpectInvalid("limit").Errors[0].Allowed);
    }

    [Fact]
    public async Task A_parameter_given_twice_is_refused()
    {
        TestLoft loft = await TestLoft.Open(service);
        (await loft.Caller.Get($"{loft.Path}/batches?limit=1&limit=2")).ExpectInvalid("limit");
    }

    [Fact]
    public async Task An_unknown_parameter_is_refused()
    {
        TestLoft loft = await TestLoft.Open(service);
        (await loft.Caller.Get($"{loft.Path}/batches?limits=1")).ExpectInvalid("limits");
    }

    [Theory]
    [InlineData("kind=Observed&from=2026-03-01T00:00:00Z&to=2026-03-02T00:00:00Z", "kind")]
    [InlineData("kind=0&from=2026-03-01T00:00:00Z&to=2026-03-02T00:00:00Z", "kind")]
    [InlineData("from=2026-03-01T00:00:00Z&to=2026-03-02T00:00:00Z", "kind")]
    [InlineData("kind=observed&from=2026-03-01T00:00:00&to=2026-03-02T00:00:00Z", "from")]
    [InlineData("kind=observed&from=2026-03-01T00:00:00+05:30&to=2026-03-02T00:00:00Z", "from")]
    [InlineData("kind=observed&from=2026-03-01T00:00:00Z&to=2026-02-28T00:00:00Z", "to")]
    [InlineData("kind=observed&from=2026-03-01T00:00:00Z&to=2026-12-28T00:00:00Z", "to")]
    public async Task What_is_asked_of_the_weather_is_read_strictly(string query, string field)
    {
        TestLoft loft = await TestLoft.Open(service);
        (await loft.Caller.Get($"{loft.Path}/weather?{query}")).ExpectInvalid(field);
    }
}
