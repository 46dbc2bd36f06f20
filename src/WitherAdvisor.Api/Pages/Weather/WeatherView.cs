using WitherAdvisor.Api.Weather.Review;
using WitherAdvisor.Fields;
using WitherAdvisor.Loft.WeatherReviewing;
using WitherAdvisor.Review;
using WitherAdvisor.Words.Units;

namespace WitherAdvisor.Api.Pages.Weather;

/// <summary>A site's weather as its page shows it.</summary>
/// <param name="Reviewed">What is shown.</param>
/// <param name="IsNow">Of this moment; otherwise of one chosen in the address.</param>
/// <param name="Page">What every page is drawn with.</param>
public sealed record WeatherView(ReviewedSite Reviewed, bool IsNow, PageContext Page)
{
    public const string AtName = "at";

    public WallClock Clock { get; } = new(Reviewed.Site.TimeZone, Page.Words);

    public PersonUnits Units => Page.Units;

    public WeatherReview Review => Reviewed.Review;

    public DateTimeOffset At => Review.Span.Now;

    public string SiteAddress => $"/sites/{Uri.EscapeDataString(Reviewed.Site.Id)}";

    /// <summary>Its page, of now or of another moment.</summary>
    public static string Address(string siteId, DateTimeOffset? at = null) =>
        $"/sites/{Uri.EscapeDataString(siteId)}/weather" + (at is { } chosen ? $"?{AtName}={Uri.EscapeDataString(Rfc3339.Format(chosen))}" : "");

    /// <summary>The same page so many days earlier or later.</summary>
    public string DaysAway(int days) => Address(Reviewed.Site.Id, At.AddDays(days));

    /// <summary>"Tue 24 Nov", of the day that a stretch of 24 h is.</summary>
    public string DayName(ReviewDay day) => Clock.Date(day.From.AddHours(12));
}
