using System.Net;
using WitherAdvisor.Api.Tests.Pages;

namespace WitherAdvisor.Api.Tests.Http.Doors;

/// <summary>A form's token alone does not open the door.</summary>
public sealed class ForeignFormTests : IDisposable
{
    private readonly PageHost host = new();

    [Theory]
    [InlineData("https://stranger.example", HttpStatusCode.Forbidden)]
    [InlineData("null", HttpStatusCode.Forbidden)]
    [InlineData("http://localhost", HttpStatusCode.SeeOther)]
    public async Task A_form_filled_in_with_its_token_is_taken_from_our_own_pages_only(string origin, HttpStatusCode status)
    {
        await host.WithSite();
        host.Browser.DefaultRequestHeaders.Add("Origin", origin);

        using HttpResponseMessage answer = await host.Send(PageHost.NewBatch, PageHost.NewBatch, PageHost.Batch());

        Assert.Equal(status, answer.StatusCode);
    }

    public void Dispose() => host.Dispose();
}
