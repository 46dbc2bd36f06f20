namespace WitherAdvisor.Api.Http;

/// <summary>Reads a body whole, up to the most this service takes.</summary>
internal static class BodyBytes
{
    /// <summary>Thrice five thousand readings fit in it.</summary>
    public const int Most = 4 * 1024 * 1024;

    public static async Task<Refusable<byte[]>> Read(HttpRequest request, CancellationToken cancel)
    {
        if (request.ContentLength > Most)
        {
            return new(null, Problem.TooLarge(Most));
        }

        using MemoryStream whole = new();
        byte[] part = new byte[16 * 1024];
        int read;
        while ((read = await request.Body.ReadAsync(part, cancel)) > 0)
        {
            if (whole.Length + read > Most)
            {
                return new(null, Problem.TooLarge(Most));
            }

            await whole.WriteAsync(part.AsMemory(0, read), cancel);
        }

        return new(whole.ToArray(), null);
    }
}
