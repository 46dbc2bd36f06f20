using System.Text.Json;
using System.Text.Json.Nodes;
using WitherAdvisor.Api.Weather;
using WitherAdvisor.Fields.Json;

namespace WitherAdvisor.Api.Demo;

/// <summary>The files of the invented estate (fixtures/invented-estate), which travel inside the service.</summary>
internal static class InventedFiles
{
    public static JsonNode Read(string file) => JsonNode.Parse(Bytes(file))!;

    /// <summary>A request, without the names that its address carries.</summary>
    public static T Request<T>(JsonNode node, params string[] inTheAddress)
    {
        JsonObject request = node.DeepClone().AsObject();
        foreach (string name in inTheAddress)
        {
            request.Remove(name);
        }

        return request.Deserialize<T>(JsonRules.Request)!;
    }

    public static IReadOnlyList<ReadingRequest> Readings(string file) =>
        CsvReadings.Read(Bytes(file), KeptRows.AllOrNone, latest: null).Value?.Good ?? throw new InvalidDataException($"{file} of the invented estate cannot be read.");

    private static byte[] Bytes(string file)
    {
        using Stream stream = typeof(InventedFiles).Assembly.GetManifestResourceStream($"invented-estate/{file}")
            ?? throw new InvalidDataException($"{file} of the invented estate is missing.");
        using MemoryStream copy = new();
        stream.CopyTo(copy);
        return copy.ToArray();
    }
}
