namespace WitherAdvisor.Api.Pages.Home;

/// <summary>The page of all troughs.</summary>
internal static class HomeEndpoints
{
    public static async Task<IResult> Show(HttpContext http, OnHand onHand, TimeProvider clock, CancellationToken cancel)
    {
        PageContext page = PageAnswer.Context(http, clock);
        return PageAnswer.Of<HomePage>(new { Sites = await onHand.Everywhere(page.Now, cancel), Page = page });
    }
}
