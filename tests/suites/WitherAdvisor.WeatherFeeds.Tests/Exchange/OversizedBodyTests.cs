using System.IO.Compression;
using System.Text;
using WitherAdvisor.WeatherFeeds.Exchange;

namespace WitherAdvisor.WeatherFeeds.Tests.Exchange;

/// <summary>No answer can fill the memory, nor be waited for to its end.</summary>
public sealed class OversizedBodyTests
{
    private const int MegaByte = 1024 * 1024;

    [Theory]
    [InlineData("200 OK", RefusalReason.TooLarge)]
    [InlineData("500 Fault", RefusalReason.ServerFault)]
    public async Task A_body_without_end_is_left_at_the_cap(string status, RefusalReason reason)
    {
        long sent = 0;
        using var server = new RawServer(async (_, client, cancel) =>
        {
            await RawServer.Send(client, $"HTTP/1.1 {status}\r\nTransfer-Encoding: chunked\r\n\r\n", cancel);
            string chunk = $"10000\r\n{new string('[', 65_536)}\r\n";
            while (true)
            {
                await RawServer.Send(client, chunk, cancel);
                Interlocked.Add(ref sent, chunk.Length);
            }
        });
        using var feed = new Feed(server.Url, ("Retries", "0"));

        Expect.Refusal(reason, await feed.Fetch());

        // The cap is 4 MB; the rest is what the system's sockets hold between the two ends.
        Assert.InRange(Interlocked.Read(ref sent), 0, 32 * MegaByte);
        Assert.Equal(1, server.Connections);
    }

    [Fact]
    public async Task A_gzip_bomb_is_left_at_the_cap()
    {
        byte[] bomb = Gzip(Encoding.ASCII.GetBytes(new string(' ', 64 * MegaByte)));
        Assert.True(bomb.Length < MegaByte);
        using var server = new RawServer(async (_, client, cancel) =>
        {
            await RawServer.Send(client, $"HTTP/1.1 200 OK\r\nContent-Encoding: gzip\r\nContent-Length: {bomb.Length}\r\n\r\n", cancel);
            await client.GetStream().WriteAsync(bomb, cancel);
        });
        using var feed = new Feed(server.Url);

        Expect.Refusal(RefusalReason.TooLarge, await feed.Fetch());
    }

    [Fact]
    public async Task A_compressed_answer_is_read()
    {
        byte[] body = Gzip(FeedFixture.Text("three-days.json").Utf8());
        using var server = new RawServer(async (_, client, cancel) =>
        {
            await RawServer.Send(client, $"HTTP/1.1 200 OK\r\nContent-Encoding: gzip\r\nContent-Length: {body.Length}\r\n\r\n", cancel);
            await client.GetStream().WriteAsync(body, cancel);
        });
        using var feed = new Feed(server.Url);

        Assert.Equal(72, Expect.Series(await feed.Fetch()).Readings.Count);
    }

    [Theory]
    [InlineData("gzip")]
    [InlineData("deflate")]
    public async Task Damaged_compression_is_a_broken_answer(string encoding)
    {
        using var server = new RawServer((_, client, cancel) => RawServer.Send(
            client, $"HTTP/1.1 200 OK\r\nContent-Encoding: {encoding}\r\nContent-Length: 12\r\nConnection: close\r\n\r\nnot zipped..", cancel));
        using var feed = new Feed(server.Url);

        Expect.Refusal(RefusalReason.BrokenJson, await feed.Fetch());
    }

    [Fact]
    public async Task Headers_without_end_are_refused()
    {
        using var server = new RawServer(async (_, client, cancel) =>
        {
            await RawServer.Send(client, "HTTP/1.1 200 OK\r\n", cancel);
            while (true)
            {
                await RawServer.Send(client, $"X-More: {new string('x', 1_000)}\r\n", cancel);
            }
        });
        using var feed = new Feed(server.Url);

        Expect.Refusal(RefusalReason.TooLarge, await feed.Fetch());
    }

    [Theory]
    [InlineData(999, false)]
    [InlineData(1_000, false)]
    [InlineData(1_001, true)]
    public async Task The_cap_is_kept_to_the_byte(int bodyBytes, bool over)
    {
        ReadOnlyMemory<byte>? body = await CappedBody.Read(
            new MemoryStream(new byte[bodyBytes]), 1_000, TestContext.Current.CancellationToken);

        Assert.Equal(over, body is null);
        Assert.Equal(over ? null : bodyBytes, body?.Length);
    }

    private static byte[] Gzip(byte[] plain)
    {
        using var packed = new MemoryStream();
        using (var gzip = new GZipStream(packed, CompressionLevel.Fastest))
        {
            gzip.Write(plain);
        }

        return packed.ToArray();
    }
}
