using System.Text.Json.Nodes;
using WitherAdvisor.Api.Tests.Testing;

namespace WitherAdvisor.Api.Tests.Http;

/// <summary>A name shows as what it is.</summary>
public sealed class UnseenTextTests(RunningService service)
{
    [Theory]
    [InlineData("\u202E")]
    [InlineData("\u202A")]
    [InlineData("\u2066")]
    [InlineData("\u2069")]
    [InlineData("\u200B")]
    [InlineData("\u200D")]
    [InlineData("\u200E")]
    [InlineData("\u200F")]
    [InlineData("\u061C")]
    [InlineData("\u2060")]
    [InlineData("\u2028")]
    [InlineData("\uFEFF")]
    [InlineData("\u0000")]
    [InlineData("\u001B")]
    public async Task A_name_with_an_unseen_character_is_refused_and_the_answer_says_so(string unseen)
    {
        Reply reply = await Put($"Hill{unseen}top");
        Assert.Contains("unseen", reply.ExpectInvalid("name").Errors[0].Allowed, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("ශ්‍රී ලංකා")]
    [InlineData("क्‍ष पहाड़ी")]
    [InlineData("خانه‌ها")]
    [InlineData("שלום 12")]
    [InlineData("Café 茶")]
    public async Task Words_of_any_script_may_be_a_name(string name) => (await Put(name)).Expect(201);

    private Task<Reply> Put(string name)
    {
        JsonObject site = Bodies.Site();
        site["name"] = name;
        return service.Caller.Put($"/v1/sites/unseen-{Guid.NewGuid():N}"[..32], site);
    }
}
