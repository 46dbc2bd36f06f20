using System.Text.Json;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;

namespace WitherAdvisor.Architecture.Tests;

/// <summary>A file of requests that an editor sends to a running service.</summary>
internal static partial class HttpFile
{
    /// <summary>Requests that the document of the interface does not know, and bodies that are no JSON.</summary>
    public static IEnumerable<string> Faults(string text, JsonNode document) => Request().Matches(text)
        .SelectMany(found => Faults(found.Groups["method"].Value, found.Groups["path"].Value, found.Groups["rest"].Value, document["paths"]!.AsObject()));

    /// <summary>How many requests there are.</summary>
    public static int Count(string text) => Request().Count(text);

    private static IEnumerable<string> Faults(string method, string path, string rest, JsonObject known)
    {
        if (!known.Any(one => Fits(one.Key, path) && one.Value![method.ToLowerInvariant()] is not null))
        {
            yield return $"{method} {path} is not in the document";
        }

        if (rest.Contains("application/json", StringComparison.Ordinal) && !IsJson(rest[rest.IndexOf("\n\n", StringComparison.Ordinal)..]))
        {
            yield return $"the body of {method} {path} is no JSON";
        }
    }

    private static bool Fits(string template, string path)
    {
        string[] wanted = template.Split('/');
        string[] given = path.Split('/');
        return wanted.Length == given.Length
            && wanted.Zip(given).All(part => part.First.StartsWith('{') ? part.Second.Length > 0 : part.First == part.Second);
    }

    private static bool IsJson(string body)
    {
        try
        {
            return JsonNode.Parse(body) is not null;
        }
        catch (JsonException)
        {
            return false;
        }
    }

    [GeneratedRegex(@"^(?<method>GET|PUT|POST|DELETE) \{\{host\}\}(?<path>[^?\s]*)\S*\n(?<rest>.*?)(?=^###|\z)", RegexOptions.Multiline | RegexOptions.Singleline | RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Request();
}
