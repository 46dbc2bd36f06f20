using System.Text.Json.Serialization.Metadata;

namespace WitherAdvisor.Fields.Json;

/// <summary>Rounds computed numbers as they are written: digits beyond any instrument's would only pretend.</summary>
internal static class ComputedNumbers
{
    private const int DecimalsWithoutUnit = 3;

    public static void Round(JsonTypeInfo type)
    {
        if (!type.Type.IsDefined(typeof(ComputedAttribute), inherit: false))
        {
            return;
        }

        foreach (JsonPropertyInfo property in type.Properties)
        {
            if (property.Get is { } get && IsNumber(property.PropertyType))
            {
                int decimals = Unit.OfName(property.Name)?.Decimals ?? DecimalsWithoutUnit;
                property.Get = owner => get(owner) is double number ? Rounded(number, decimals) : null;
            }
        }
    }

    // Adding 0 turns −0, which rounding makes of small negative numbers, into 0.
    private static double Rounded(double number, int decimals) => Math.Round(number, decimals) + 0.0;

    private static bool IsNumber(Type type) => type == typeof(double) || type == typeof(double?);
}
