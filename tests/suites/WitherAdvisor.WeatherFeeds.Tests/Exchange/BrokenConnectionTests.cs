using System.Net;
using System.Net.Sockets;

namespace WitherAdvisor.WeatherFeeds.Tests.Exchange;

/// <summary>Faults below HTTP, each with a bare listener, as a proper server cannot be made to do them.</summary>
public sealed class BrokenConnectionTests
{
    [Fact]
    public async Task A_host_name_that_nobody_knows_is_no_connection()
    {
        // Reserved never to exist: RFC 6761, section 6.4.
        using var feed = new Feed("http://feed.invalid");

        Expect.Refusal(RefusalReason.NoConnection, await feed.Fetch());
    }

    [Fact]
    public async Task A_port_that_nobody_listens_on_is_no_connection()
    {
        var listener = new TcpListener(IPAddress.Loopback, 0);
        listener.Start();
        int port = ((IPEndPoint)listener.LocalEndpoint).Port;
        listener.Dispose();
        using var feed = new Feed($"http://127.0.0.1:{port}");

        Expect.Refusal(RefusalReason.NoConnection, await feed.Fetch());
    }

    [Fact]
    public async Task A_server_without_tls_where_tls_was_configured_is_no_connection()
    {
        using var server = new FeedServer(FeedServer.Good());
        using var feed = new Feed(server.Url.Replace("http:", "https:", StringComparison.Ordinal));

        Expect.Refusal(RefusalReason.NoConnection, await feed.Fetch());
    }

    [Fact]
    public async Task A_connection_reset_in_mid_body_is_tried_three_times_in_all()
    {
        using var server = new RawServer(SendHalfAndReset);
        using var feed = new Feed(server.Url);

        Expect.Refusal(RefusalReason.ConnectionLost, await feed.Fetch());

        Assert.Equal(3, server.Connections);
    }

    [Fact]
    public async Task A_connection_reset_in_mid_body_and_then_a_good_one_is_a_series()
    {
        using var server = new RawServer((number, client, cancel) =>
            number == 1 ? SendHalfAndReset(number, client, cancel) : RawServer.SendGood(client, cancel));
        using var feed = new Feed(server.Url);

        Assert.Equal(72, Expect.Series(await feed.Fetch()).Readings.Count);
    }

    [Fact]
    public async Task A_connection_closed_before_any_answer_is_lost()
    {
        using var server = new RawServer((_, _, _) => Task.CompletedTask);
        using var feed = new Feed(server.Url);

        Expect.Refusal(RefusalReason.ConnectionLost, await feed.Fetch());
    }

    [Fact]
    public async Task An_answer_shorter_than_it_says_is_lost()
    {
        using var server = new RawServer((_, client, cancel) =>
            RawServer.Send(client, RawServer.Head(FeedFixture.Text("three-days.json")) + "{\"latitude\":", cancel));
        using var feed = new Feed(server.Url);

        Expect.Refusal(RefusalReason.ConnectionLost, await feed.Fetch());
    }

    [Fact]
    public async Task What_is_not_http_is_refused()
    {
        using var server = new RawServer((_, client, cancel) => RawServer.Send(client, "220 mail.example ready\r\n\r\n", cancel));
        using var feed = new Feed(server.Url);

        Expect.Refusal(RefusalReason.ConnectionLost, await feed.Fetch());
    }

    private static async Task SendHalfAndReset(int number, TcpClient client, CancellationToken cancel)
    {
        string body = FeedFixture.Text("three-days.json");
        await RawServer.Send(client, RawServer.Head(body) + body[..(body.Length / 2)], cancel);
        RawServer.Reset(client);
    }
}
