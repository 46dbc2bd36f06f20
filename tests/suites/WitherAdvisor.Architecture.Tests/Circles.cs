namespace WitherAdvisor.Architecture.Tests;

/// <summary>Groups of namespaces of which each can be reached from each.</summary>
internal static class Circles
{
    /// <summary>One line a circle, with the uses that close it; none where the namespaces form a one-way chain.</summary>
    public static IReadOnlyList<string> In(IReadOnlyDictionary<string, Dictionary<string, string>> uses)
    {
        Dictionary<string, HashSet<string>> reached = uses.Keys.ToDictionary(name => name, name => Reached(uses, name), StringComparer.Ordinal);
        return
        [
            .. uses.Keys
                .Where(name => reached[name].Contains(name))
                .Select(name => string.Join(", ", reached[name].Where(other => reached[other].Contains(name)).Order(StringComparer.Ordinal)))
                .Distinct(StringComparer.Ordinal)
                .Order(StringComparer.Ordinal)
                .Select(circle => $"{circle}: {Uses(uses, circle.Split(", "))}"),
        ];
    }

    private static HashSet<string> Reached(IReadOnlyDictionary<string, Dictionary<string, string>> uses, string start)
    {
        var reached = new HashSet<string>(StringComparer.Ordinal);
        var open = new Stack<string>([start]);
        while (open.TryPop(out string? name))
        {
            if (!uses.TryGetValue(name, out Dictionary<string, string>? used))
            {
                continue;
            }

            foreach (string next in used.Keys.Where(reached.Add))
            {
                open.Push(next);
            }
        }

        return reached;
    }

    private static string Uses(IReadOnlyDictionary<string, Dictionary<string, string>> uses, string[] circle) => string.Join(
        "; ", circle.SelectMany(name => uses[name].Where(use => circle.Contains(use.Key, StringComparer.Ordinal)).Select(use => use.Value)));
}
