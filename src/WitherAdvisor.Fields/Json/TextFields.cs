using System.Globalization;
using System.Text.Json;
using System.Text.Json.Nodes;

namespace WitherAdvisor.Fields.Json;

/// <summary>Fields that came as text, in a query or a CSV row, as the JSON that they would have come in.</summary>
internal static class TextFields
{
    /// <summary>What should be a number and is none stays text, so that the check refuses it by name.</summary>
    public static JsonElement ToJson(ObjectShape shape, IEnumerable<KeyValuePair<string, string>> fields)
    {
        HashSet<string> numbers = [.. shape.Fields.Where(field => field.Shape is NumberShape).Select(field => field.Name)];
        JsonObject json = [];
        foreach ((string name, string text) in fields)
        {
            json[name] = numbers.Contains(name) && Number(text) is { } number ? number : text;
        }

        return JsonSerializer.SerializeToElement(json);
    }

    /// <summary>Null unless it is a finite number with a point, if any, and no thousands separators.</summary>
    private static double? Number(string text) =>
        double.TryParse(
            text, NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint | NumberStyles.AllowExponent,
            CultureInfo.InvariantCulture, out double number) && double.IsFinite(number)
            ? number
            : null;
}
