using System.Buffers;

namespace WitherAdvisor.WeatherFeeds.Exchange;

/// <summary>Reads a body as far as a limit and no further, so that neither a flood nor a bomb of compressed nothing fills the memory.</summary>
internal static class CappedBody
{
    private const int StepBytes = 16 * 1024;

    /// <summary>The body after decompression; null where it is over the limit.</summary>
    public static async Task<ReadOnlyMemory<byte>?> Read(Stream stream, int mostBytes, CancellationToken cancel)
    {
        var body = new ArrayBufferWriter<byte>(StepBytes);
        while (true)
        {
            int read = await stream.ReadAsync(body.GetMemory(StepBytes), cancel);
            if (read == 0)
            {
                return body.WrittenMemory;
            }

            body.Advance(read);
            if (body.WrittenCount > mostBytes)
            {
                return null;
            }
        }
    }
}
