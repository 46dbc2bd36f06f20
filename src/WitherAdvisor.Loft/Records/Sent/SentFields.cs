using System.Text.Json;

namespace WitherAdvisor.Loft.Records.Sent;

/// <summary>Fields of an object of an answer as it was sent.</summary>
internal readonly struct SentFields(JsonElement json)
{
    // A rounded figure may lie half of its last place off, and what rounding itself errs by.
    private const double HalfAPlace = 0.5 + 1e-6;

    public bool Has(string name) => json.GetProperty(name).ValueKind != JsonValueKind.Null;

    /// <summary>Whether a member is there and has a value, of those that answers did not always have.</summary>
    public bool Holds(string name) => json.TryGetProperty(name, out JsonElement value) && value.ValueKind != JsonValueKind.Null;

    public SentFields Object(string name) => new(json.GetProperty(name));

    public IReadOnlyList<SentFields> List(string name) => [.. json.GetProperty(name).EnumerateArray().Select(item => new SentFields(item))];

    public IReadOnlyList<double> Numbers(string name, IReadOnlyList<double>? exact)
    {
        double[] sent = [.. json.GetProperty(name).EnumerateArray().Select(item => item.GetDouble())];
        return exact?.Count == sent.Length ? [.. sent.Zip(exact, (one, digits) => Sharpened(one, digits, 2, 1))] : sent;
    }

    public string Text(string name) => json.GetProperty(name).GetString() ?? throw new JsonException(name);

    public int Count(string name) => json.GetProperty(name).GetInt32();

    public int? CountOrNull(string name) => Has(name) ? Count(name) : null;

    public T Word<T>(string name)
        where T : struct, Enum => json.GetProperty(name).Deserialize<T>(RecordJson.Options);

    /// <summary>A number that was rounded to some places, with the digits behind it where they round to it.</summary>
    /// <param name="perUnit">How many of the answer's unit make one of the domain's.</param>
    public double Number(string name, int places, double? exact, double perUnit = 1) =>
        Sharpened(json.GetProperty(name).GetDouble(), exact, places, perUnit);

    public double? NumberOrNull(string name, int places, double? exact, double perUnit = 1) =>
        Has(name) ? Number(name, places, exact, perUnit) : null;

    /// <summary>A fraction that was sent as percent or points.</summary>
    public double Fraction(string name, double? exact) => Number(name, 2, exact, 100);

    public double? FractionOrNull(string name, double? exact) => NumberOrNull(name, 2, exact, 100);

    private static double Sharpened(double sent, double? exact, int places, double perUnit) =>
        exact is { } digits && Math.Abs(digits * perUnit - sent) <= HalfAPlace * Math.Pow(10, -places) ? digits : sent / perUnit;
}
