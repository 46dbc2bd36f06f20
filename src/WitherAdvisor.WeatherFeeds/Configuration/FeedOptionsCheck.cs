using System.Text.RegularExpressions;
using Microsoft.Extensions.Options;

namespace WitherAdvisor.WeatherFeeds.Configuration;

/// <summary>Finds what is wrong in the operator's feeds when the service starts, not in the night when one is first asked.</summary>
internal sealed partial class FeedOptionsCheck : IValidateOptions<WeatherFeedsOptions>
{
    public ValidateOptionsResult Validate(string? name, WeatherFeedsOptions options)
    {
        List<string> faults = [.. options.Feeds.SelectMany(feed => Faults(feed.Key, feed.Value)
            .Select(fault => $"{WeatherFeedsOptions.Section}:Feeds:{feed.Key}: {fault}"))];
        return faults.Count == 0 ? ValidateOptionsResult.Success : ValidateOptionsResult.Fail(faults);
    }

    private static IEnumerable<string> Faults(string name, FeedOptions feed) =>
        [.. NameFaults(name), .. AddressFaults(feed), .. KeyFaults(feed), .. LimitFaults(feed)];

    private static IEnumerable<string> NameFaults(string name)
    {
        if (!Name().IsMatch(name))
        {
            yield return "a name is lower-case letters, digits, \"-\" and \"_\", at most 40";
        }
    }

    private static IEnumerable<string> AddressFaults(FeedOptions feed)
    {
        if (feed.ForecastBaseUrl is null)
        {
            yield return $"{nameof(feed.ForecastBaseUrl)} is missing";
        }

        foreach (Uri url in new[] { feed.ForecastBaseUrl, feed.ArchiveBaseUrl }.OfType<Uri>())
        {
            if (!url.IsAbsoluteUri || (url.Scheme != Uri.UriSchemeHttps && url.Scheme != Uri.UriSchemeHttp))
            {
                yield return $"{url} is not an http or https address";
            }
            else if (url.Scheme == Uri.UriSchemeHttp && !feed.AllowHttp)
            {
                yield return $"{url} has no TLS; set {nameof(feed.AllowHttp)} if that is meant";
            }
            else if (url.Query.Length > 0 || url.Fragment.Length > 0 || url.UserInfo.Length > 0)
            {
                yield return "a base address has no query, fragment or user";
            }
        }
    }

    private static IEnumerable<string> KeyFaults(FeedOptions feed)
    {
        bool placed = feed.KeyHeader is not null || feed.KeyQueryParameter is not null;
        if ((feed.Key is null) == placed)
        {
            yield return $"{nameof(feed.Key)} goes together with {nameof(feed.KeyHeader)} or {nameof(feed.KeyQueryParameter)}";
        }

        if (feed.KeyHeader is not null && !Token().IsMatch(feed.KeyHeader))
        {
            yield return $"{nameof(feed.KeyHeader)} is not the name of a header";
        }

        if (feed.Key is not null && !KeyText().IsMatch(feed.Key))
        {
            yield return $"{nameof(feed.Key)} may hold visible ASCII only";
        }
    }

    private static IEnumerable<string> LimitFaults(FeedOptions feed)
    {
        var limits = new (bool Kept, string Rule)[]
        {
            (feed.PastDays is >= 1 and <= FeedOptions.MostPastDays, $"{nameof(feed.PastDays)} is 1 to {FeedOptions.MostPastDays}"),
            (feed.TryLimit >= TimeSpan.FromMilliseconds(100) && feed.TryLimit <= feed.TotalLimit, $"{nameof(feed.TryLimit)} is 0.1 s to {nameof(feed.TotalLimit)}"),
            (feed.TotalLimit <= TimeSpan.FromMinutes(5), $"{nameof(feed.TotalLimit)} is at most 5 min"),
            (feed.Retries is >= 0 and <= 3, $"{nameof(feed.Retries)} is 0 to 3"),
            (feed.RetryPause >= TimeSpan.Zero && feed.RetryPause <= TimeSpan.FromMinutes(1), $"{nameof(feed.RetryPause)} is 0 to 60 s"),
            (feed.MostAtOnce is >= 1 and <= 8, $"{nameof(feed.MostAtOnce)} is 1 to 8"),
            (feed.MostWaiting is >= 0 and <= 1_000, $"{nameof(feed.MostWaiting)} is 0 to 1000"),
            (feed.BreakerFailures is >= 2 and <= 100, $"{nameof(feed.BreakerFailures)} is 2 to 100"),
            (Lasts(feed.BreakerWindow), $"{nameof(feed.BreakerWindow)} is 1 s to 1 day"),
            (Lasts(feed.BreakerRest), $"{nameof(feed.BreakerRest)} is 1 s to 1 day"),
            (feed.MostBodyBytes is >= 1_024 and <= 64 * 1024 * 1024, $"{nameof(feed.MostBodyBytes)} is 1 kB to 64 MB"),
        };
        return limits.Where(limit => !limit.Kept).Select(limit => limit.Rule);
    }

    private static bool Lasts(TimeSpan time) => time >= TimeSpan.FromSeconds(1) && time <= TimeSpan.FromDays(1);

    [GeneratedRegex(@"^[a-z0-9][a-z0-9_-]{0,39}\z", RegexOptions.ExplicitCapture, 1_000)]
    private static partial Regex Name();

    [GeneratedRegex(@"^[A-Za-z0-9-]{1,60}\z", RegexOptions.ExplicitCapture, 1_000)]
    private static partial Regex Token();

    [GeneratedRegex(@"^[!-~]{1,500}\z", RegexOptions.ExplicitCapture, 1_000)]
    private static partial Regex KeyText();
}
