using System.Net;
using System.Net.Http.Headers;
using WitherAdvisor.WeatherFeeds.Asking;
using WitherAdvisor.WeatherFeeds.Configuration;
using WitherAdvisor.WeatherFeeds.Reading;
using static WitherAdvisor.WeatherFeeds.FeedAnswer;

namespace WitherAdvisor.WeatherFeeds.Exchange;

/// <summary>The typed client of one feed: one question, one answer, no second try.</summary>
internal sealed class FeedExchange(string feedName, FeedOptions options, IHttpClientFactory clients, TimeProvider clock)
{
    /// <summary>Words of a fault are short.</summary>
    private const int MostErrorBytes = 64 * 1024;

    /// <summary>Asks once; what the network does to it is an answer too.</summary>
    /// <exception cref="OperationCanceledException">Cancelled, by a time limit or the host.</exception>
    public async Task<FeedAnswer> Ask(FeedQuery query, CancellationToken cancel)
    {
        if (FeedAddress.Of(query, options) is not Uri address)
        {
            return new Refused(RefusalReason.NoArchive, new FeedFault.NoArchive());
        }

        try
        {
            return await Ask(address, query, cancel);
        }
        catch (Exception exception) when (BrokenExchange.Of(exception) is not null)
        {
            return BrokenExchange.Of(exception)!;
        }
    }

    private async Task<FeedAnswer> Ask(Uri address, FeedQuery query, CancellationToken cancel)
    {
        using HttpRequestMessage request = Request(address);
        using HttpClient client = clients.CreateClient(FeedConnection.Name);
        // Headers first: the body is then read as far as the cap, and within the same time limit.
        using HttpResponseMessage response = await client.SendAsync(request, HttpCompletionOption.ResponseHeadersRead, cancel);
        DateTimeOffset now = clock.GetUtcNow();
        bool good = response.StatusCode == HttpStatusCode.OK;
        await using Stream stream = await response.Content.ReadAsStreamAsync(cancel);
        int most = good ? options.MostBodyBytes : MostErrorBytes;
        ReadOnlyMemory<byte>? body = await CappedBody.Read(stream, most, cancel);
        if (!good)
        {
            return StatusRefusal.Of(response, body is null ? null : ErrorBody.Reason(body.Value), options.Key, now);
        }

        return body is null
            ? new Refused(RefusalReason.TooLarge, new FeedFault.OverLimit(most))
            : AnswerReader.Read(body.Value, new(
                query, feedName, options.Attribution, options.Key, FetchedAt: now, response.Headers.Date));
    }

    private HttpRequestMessage Request(Uri address)
    {
        var request = new HttpRequestMessage(HttpMethod.Get, address);
        request.Headers.Accept.Add(new MediaTypeWithQualityHeaderValue("application/json"));
        request.Headers.CacheControl = new CacheControlHeaderValue { NoCache = true };
        request.Headers.UserAgent.Add(new ProductInfoHeaderValue("WitherAdvisor", null));
        if (options is { KeyHeader: { } header, Key: { } key })
        {
            request.Headers.TryAddWithoutValidation(header, key);
        }

        return request;
    }
}
