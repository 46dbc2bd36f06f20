using Microsoft.AspNetCore.Http.HttpResults;
using WitherAdvisor.Api.Http;
using WitherAdvisor.Loft.Kept.Sites;
using WitherAdvisor.Loft.WeatherReviewing;
using WitherAdvisor.Loft;

namespace WitherAdvisor.Api.Weather.Review;

/// <summary>Routes of the weather's review.</summary>
internal static class ReviewEndpoints
{
    public static void MapReview(this RouteGroupBuilder v1) =>
        v1.MapGroup("/sites/{site}").WithTags("Weather").MapGet("weather/review", GetReview);

    /// <summary>The last days and the coming night as the model sees them: hours, days, spells with the numbers behind them, gaps and age.</summary>
    private static async Task<Results<Ok<WeatherReviewResponse>, ProblemResult>> GetReview(
        string site, Query<ReviewQuery> query, ISiteStore sites, SiteReviews reviews, TimeProvider clock, CancellationToken cancel)
    {
        if (await sites.FindSite(site, cancel) is not { } found)
        {
            return Problem.Unknown("site", site);
        }

        ReviewedSite reviewed = await reviews.Of(
            found, query.Value.At ?? clock.NowInMilliseconds(), query.Value.Days ?? ReviewQuery.UsualDays, cancel);
        return TypedResults.Ok(ReviewMapping.ToResponse(reviewed));
    }
}
