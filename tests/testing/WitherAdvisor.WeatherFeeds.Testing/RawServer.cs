using System.Net;
using System.Net.Sockets;
using System.Text;

namespace WitherAdvisor.WeatherFeeds.Testing;

/// <summary>A bare TCP listener that does to each connection what no proper HTTP server would.</summary>
public sealed class RawServer : IDisposable
{
    private readonly TcpListener listener = new(IPAddress.Loopback, 0);
    private readonly CancellationTokenSource stopping = new();
    private readonly CancellationToken stopped;
    private readonly Func<int, TcpClient, CancellationToken, Task> serve;
    private readonly SemaphoreSlim arrived = new(0);
    private int connections;

    /// <param name="serve">What to do with a connection once its request has come; the number counts connections from 1.</param>
    public RawServer(Func<int, TcpClient, CancellationToken, Task> serve)
    {
        this.serve = serve;
        stopped = stopping.Token;
        listener.Start();
        _ = Accept();
    }

    public string Url => $"http://127.0.0.1:{((IPEndPoint)listener.LocalEndpoint).Port}";

    /// <summary>Connections whose request has come.</summary>
    public int Connections => Volatile.Read(ref connections);

    public static string Head(string body, string more = "") =>
        $"HTTP/1.1 200 OK\r\nContent-Type: application/json\r\nDate: {FeedFixture.FetchedAt:R}\r\nConnection: close\r\n{more}Content-Length: {Encoding.UTF8.GetByteCount(body)}\r\n\r\n";

    public static async Task Send(TcpClient client, string text, CancellationToken cancel) =>
        await client.GetStream().WriteAsync(text.Utf8(), cancel);

    public static Task SendGood(TcpClient client, CancellationToken cancel)
    {
        string body = FeedFixture.Text("three-days.json");
        return Send(client, Head(body) + body, cancel);
    }

    /// <summary>Ends a connection as a crashed machine does, not as a polite one.</summary>
    public static void Reset(TcpClient client)
    {
        client.LingerState = new LingerOption(true, 0);
        client.Close();
    }

    /// <summary>Until one more request has come.</summary>
    public Task Arrival() => arrived.WaitAsync(TestContext.Current.CancellationToken);

    public void Dispose()
    {
        stopping.Cancel();
        listener.Dispose();
        stopping.Dispose();
        arrived.Dispose();
    }

    private async Task Accept()
    {
        try
        {
            while (true)
            {
                _ = Serve(await listener.AcceptTcpClientAsync(stopped));
            }
        }
        catch (Exception over) when (over is OperationCanceledException or SocketException or ObjectDisposedException)
        {
            // The test is over.
        }
    }

    private async Task Serve(TcpClient client)
    {
        using (client)
        {
            try
            {
                await ReadRequest(client);
                int number = Interlocked.Increment(ref connections);
                arrived.Release();
                await serve(number, client, stopped);
            }
            catch (Exception gone) when (gone is IOException or OperationCanceledException or ObjectDisposedException)
            {
                // The other side went away, as it should when its limit strikes.
            }
        }
    }

    private async Task ReadRequest(TcpClient client)
    {
        var request = new StringBuilder();
        byte[] buffer = new byte[4_096];
        while (!request.ToString().Contains("\r\n\r\n", StringComparison.Ordinal))
        {
            int read = await client.GetStream().ReadAsync(buffer, stopped);
            if (read == 0)
            {
                throw new IOException("no request");
            }

            request.Append(Encoding.ASCII.GetString(buffer, 0, read));
        }
    }
}
