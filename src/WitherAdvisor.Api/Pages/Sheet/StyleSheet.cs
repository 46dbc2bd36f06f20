using System.Security.Cryptography;

namespace WitherAdvisor.Api.Pages.Sheet;

/// <summary>The style sheet, carried inside the program so that it is there however the program is started.</summary>
/// <remarks>Static web assets were tried: run unpublished in Production they answer a gzip client with an empty body.</remarks>
public static class StyleSheet
{
    private const string ResourceName = "WitherAdvisor.Api.Pages.Sheet.pages.css";

    private static readonly byte[] Bytes = Read();

    /// <summary>Carries a hash of the content, so that a browser may keep it for ever.</summary>
    public static string Address { get; } = $"/pages-{Convert.ToHexStringLower(SHA256.HashData(Bytes))[..12]}.css";

    public static IResult Show(HttpResponse response)
    {
        response.Headers.CacheControl = "public, max-age=31536000, immutable";
        return TypedResults.Bytes(Bytes, "text/css; charset=utf-8");
    }

    private static byte[] Read()
    {
        using Stream stream = typeof(StyleSheet).Assembly.GetManifestResourceStream(ResourceName)
            ?? throw new InvalidOperationException($"The program was built without {ResourceName}.");
        using MemoryStream copy = new();
        stream.CopyTo(copy);
        return copy.ToArray();
    }
}
