using System.IO.Compression;
using System.Net.Sockets;
using System.Text;
using WireMock.ResponseBuilders;
using WitherAdvisor.WeatherFeeds.Testing;

namespace WitherAdvisor.Api.Tests.Feeds;

/// <summary>A feed on the loopback that is well or ill in one way.</summary>
/// <param name="Url">Where it is asked.</param>
/// <param name="Server">What answers there; null where nothing does.</param>
/// <param name="Arrival">Until one more question has come; null where answers come without waiting.</param>
internal sealed record FakeFeed(string Url, IDisposable? Server = null, Func<Task>? Arrival = null) : IDisposable
{
    public static FakeFeed Of(params IResponseBuilder[] answers)
    {
        FeedServer server = new(answers);
        return new(server.Url, server);
    }

    /// <summary>Dated as the service's clock has it, which an HTTP server of the tests' own cannot be made to do.</summary>
    public static FakeFeed Json(string body) => Raw((_, client, cancel) => SendJson(client, body, cancel));

    /// <summary>Fails once with a status and is well from then on.</summary>
    public static FakeFeed Recovering(string status) => Raw((number, client, cancel) => number == 1
        ? RawServer.Send(client, $"HTTP/1.1 {status}\r\nContent-Length: 0\r\nConnection: close\r\n\r\n", cancel)
        : SendJson(client, LongAnswer.Text(), cancel));

    public static FakeFeed Raw(Func<int, TcpClient, CancellationToken, Task> serve)
    {
        RawServer server = new(serve);
        return new(server.Url, server);
    }

    /// <summary>One that makes the asker wait until its limits strike.</summary>
    public static FakeFeed Slow(Func<TcpClient, CancellationToken, Task> serve)
    {
        RawServer server = new((_, client, cancel) => serve(client, cancel));
        return new(server.Url, server, server.Arrival);
    }

    public static Task SendJson(TcpClient client, string body, CancellationToken cancel, DateTimeOffset? dated = null) => RawServer.Send(
        client, RawServer.Head(body).Replace($"{FeedFixture.FetchedAt:R}", $"{dated ?? FeedFixture.FetchedAt:R}") + body, cancel);

    /// <summary>Nobody listens at its port any more.</summary>
    public static FakeFeed Gone()
    {
        using RawServer server = new((_, _, _) => Task.CompletedTask);
        return new(server.Url);
    }

    public static async Task SendHalfAndReset(TcpClient client, CancellationToken cancel)
    {
        string body = LongAnswer.Text();
        await RawServer.Send(client, RawServer.Head(body) + body[..(body.Length / 2)], cancel);
        RawServer.Reset(client);
    }

    public static async Task Drip(TcpClient client, CancellationToken cancel)
    {
        await RawServer.Send(client, RawServer.Head(LongAnswer.Text()), cancel);
        while (true)
        {
            await RawServer.Send(client, " ", cancel);
            await Task.Delay(1, cancel);
        }
    }

    public static async Task Flood(TcpClient client, CancellationToken cancel)
    {
        await RawServer.Send(client, "HTTP/1.1 200 OK\r\nTransfer-Encoding: chunked\r\n\r\n", cancel);
        while (true)
        {
            await RawServer.Send(client, $"10000\r\n{new string('[', 65_536)}\r\n", cancel);
        }
    }

    public static async Task Bomb(TcpClient client, CancellationToken cancel)
    {
        using MemoryStream packed = new();
        await using (GZipStream gzip = new(packed, CompressionLevel.Fastest, leaveOpen: true))
        {
            await gzip.WriteAsync(Encoding.ASCII.GetBytes(new string(' ', 16 * 1024 * 1024)), cancel);
        }

        await RawServer.Send(client, $"HTTP/1.1 200 OK\r\nContent-Encoding: gzip\r\nContent-Length: {packed.Length}\r\n\r\n", cancel);
        await client.GetStream().WriteAsync(packed.ToArray(), cancel);
    }

    public void Dispose() => Server?.Dispose();
}
