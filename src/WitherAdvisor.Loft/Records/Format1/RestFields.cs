using System.Text.Json;

namespace WitherAdvisor.Loft.Records.Format1;

/// <summary>Fields of an object of a kept request; what was not given is left out of it.</summary>
internal readonly struct RestFields(JsonElement json)
{
    public RestFields Object(string name) => new(json.GetProperty(name));

    public RestFields? ObjectOrNull(string name) => Given(name) is { } given ? new(given) : null;

    public IReadOnlyList<RestFields> List(string name) =>
        Given(name) is { } given ? [.. given.EnumerateArray().Select(item => new RestFields(item))] : [];

    public IReadOnlyList<double>? NumbersOrNull(string name) =>
        Given(name) is { } given ? [.. given.EnumerateArray().Select(item => item.GetDouble())] : null;

    public string Text(string name) => json.GetProperty(name).GetString() ?? throw new JsonException(name);

    public string? TextOrNull(string name) => Given(name)?.GetString();

    public DateTimeOffset Time(string name) => json.GetProperty(name).GetDateTimeOffset();

    public DateTimeOffset? TimeOrNull(string name) => Given(name)?.GetDateTimeOffset();

    public double Number(string name) => json.GetProperty(name).GetDouble();

    public double? NumberOrNull(string name) => Given(name)?.GetDouble();

    public T? WordOrNull<T>(string name)
        where T : struct, Enum => Given(name)?.Deserialize<T>(RecordJson.Options);

    private JsonElement? Given(string name) =>
        json.TryGetProperty(name, out JsonElement given) && given.ValueKind != JsonValueKind.Null ? given : null;
}
