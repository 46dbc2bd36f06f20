using System.Text.Json.Nodes;

namespace WitherAdvisor.Api.Tests.KeptBefore;

/// <summary>A batch of a kept database, and where stands what the service of that day showed of it.</summary>
/// <param name="Version">Of the service that kept it.</param>
/// <param name="Id">As that service gave it.</param>
/// <param name="Folder">Of its pages and answers.</param>
/// <param name="Advice">Ids of its advice, newest first.</param>
public sealed record KeptBatch(string Version, string Id, string Folder, IReadOnlyList<string> Advice)
{
    /// <summary>Every batch of one version's database.</summary>
    public static IReadOnlyList<KeptBatch> Of(string version) =>
    [
        .. Index(version)["batches"]!.AsArray().Select(one => new KeptBatch(
            version, (string)one!["id"]!, (string)one["folder"]!, [.. one["advice"]!.AsArray().Select(id => (string)id!)])),
    ];

    /// <summary>The instant at which everything was looked at.</summary>
    public static DateTimeOffset LookedAt(string version) => DateTimeOffset.Parse((string)Index(version)["looked_at"]!);

    /// <summary>A page or answer as it was shown.</summary>
    public byte[] Shown(string file) => KeptFile.Bytes(Version, $"expected/{Folder}/{file}");

    private static JsonNode Index(string version) => JsonNode.Parse(KeptFile.Bytes(version, "expected/batches.json"))!;
}
