using System.Text.Json;

namespace WitherAdvisor.Tests.Pins;

/// <summary>Where one JSON tells something else than another.</summary>
internal static class JsonDifference
{
    /// <summary>Another machine's exponential function may differ in its last digits, and a search makes some more of them.</summary>
    private const double Relative = 1e-7;

    /// <summary>Below this a number is nothing but what rounding left.</summary>
    private const double Absolute = 1e-10;

    /// <summary>The first place with what stood there and what stands there now; null where both tell the same.</summary>
    public static string? First(JsonElement was, JsonElement now, string at = "$")
    {
        if (was.ValueKind != now.ValueKind)
        {
            return $"{at}: {was} → {now}";
        }

        return was.ValueKind switch
        {
            JsonValueKind.Object => InObject(was, now, at),
            JsonValueKind.Array => InArray(was, now, at),
            JsonValueKind.Number => Same(was.GetDouble(), now.GetDouble()) ? null : $"{at}: {was} → {now}",
            _ => was.ToString() == now.ToString() ? null : $"{at}: {was} → {now}",
        };
    }

    private static bool Same(double was, double now) => Math.Abs(was - now) <= Math.Max(Relative * Math.Abs(was), Absolute);

    private static string? InObject(JsonElement was, JsonElement now, string at)
    {
        string[] names = [.. was.EnumerateObject().Select(property => property.Name)];
        return names.SequenceEqual(now.EnumerateObject().Select(property => property.Name))
            ? names.Select(name => First(was.GetProperty(name), now.GetProperty(name), $"{at}.{name}")).FirstOrDefault(found => found is not null)
            : $"{at}: other fields";
    }

    private static string? InArray(JsonElement was, JsonElement now, string at) => was.GetArrayLength() == now.GetArrayLength()
        ? Enumerable.Range(0, was.GetArrayLength()).Select(i => First(was[i], now[i], $"{at}[{i}]")).FirstOrDefault(found => found is not null)
        : $"{at}: {was.GetArrayLength()} → {now.GetArrayLength()} elements";
}
