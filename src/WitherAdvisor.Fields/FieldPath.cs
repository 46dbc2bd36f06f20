namespace WitherAdvisor.Fields;

/// <summary>Paths of fields as errors name them: <c>weather[3].dry_bulb_c</c>.</summary>
internal static class FieldPath
{
    public static string Join(string outer, string inner) =>
        outer.Length == 0 ? inner
        : inner.StartsWith('[') ? outer + inner
        : outer + "." + inner;

    public static string Item(string list, int index) => $"{list}[{index}]";
}
