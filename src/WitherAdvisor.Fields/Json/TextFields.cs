using System.Globalization;
using System.Text.Json;
using System.Text.Json.Nodes;

namespace WitherAdvisor.Fields.Json;

/// <summary>Fields that came as text, in a query or a CSV row, as the JSON that they would have come in.</summary>
internal static class TextFields
{
    private const NumberStyles Measured =
        NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint | NumberStyles.AllowExponent;

    /// <summary>What should be a number and is none stays text, so that the check refuses it by name.</summary>
    public static JsonElement ToJson(ObjectShape shape, IEnumerable<KeyValuePair<string, string>> fields)
    {
        Dictionary<string, NumberShape> numbers = shape.Fields
            .Where(field => field.Shape is NumberShape).ToDictionary(field => field.Name, field => (NumberShape)field.Shape);
        JsonObject json = [];
        foreach ((string name, string text) in fields)
        {
            json[name] = numbers.TryGetValue(name, out NumberShape? wanted) && Number(text, wanted.Whole) is { } number ? number : text;
        }

        return JsonSerializer.SerializeToElement(json);
    }

    /// <summary>
    /// Null unless it is a finite number with a point, if any, and no thousands separators. A whole one is digits alone,
    /// after a minus where it is below 0: who counts writes no exponent. Tables do, for small shares.
    /// </summary>
    private static double? Number(string text, bool whole) =>
        !text.StartsWith('+')
        && double.TryParse(text, whole ? NumberStyles.AllowLeadingSign : Measured, CultureInfo.InvariantCulture, out double number)
        && double.IsFinite(number)
            ? number
            : null;
}
