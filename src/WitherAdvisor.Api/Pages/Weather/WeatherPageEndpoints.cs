using WitherAdvisor.Api.Weather.Review;
using WitherAdvisor.Fields;
using WitherAdvisor.Loft.Kept.Sites;
using WitherAdvisor.Loft.WeatherReviewing;

namespace WitherAdvisor.Api.Pages.Weather;

/// <summary>The page of a site's weather.</summary>
internal static class WeatherPageEndpoints
{
    public static async Task<IResult> Show(
        string site, HttpContext http, ISiteStore sites, SiteReviews reviews, TimeProvider clock, CancellationToken cancel)
    {
        PageContext page = PageAnswer.Context(http, clock);
        if (await sites.FindSite(site, cancel) is not { } found)
        {
            return PageAnswer.Unknown("site", page);
        }

        DateTimeOffset? at = At(http);
        PageContext here = at is null ? page : page with { Path = WeatherView.Address(site, at) };
        ReviewedSite reviewed = await reviews.Of(found, at ?? page.Now, ReviewQuery.UsualDays, cancel);
        return PageAnswer.Of<WeatherPage>(new { View = new WeatherView(reviewed, at is null, here) });
    }

    /// <summary>Null, which is now, where the address names no time that leaf is plucked at.</summary>
    private static DateTimeOffset? At(HttpContext http) =>
        Rfc3339.Parse(http.Request.Query[WeatherView.AtName].ToString()) is { } at
        && at.UtcDateTime.Year is >= InstantShape.FirstYear and <= InstantShape.LastYear
            ? at
            : null;
}
