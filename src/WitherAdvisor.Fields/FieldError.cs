using System.Text.Json;

namespace WitherAdvisor.Fields;

/// <summary>One thing wrong with a request.</summary>
public sealed record FieldError
{
    private const int LongestShown = 100;

    /// <summary>Where, as the caller wrote it: names joined by points, list places in brackets.</summary>
    /// <example>batch.green_weight_kg</example>
    public required string Field { get; init; }

    /// <summary>What was given, as JSON without escapes, cut after 100 characters; null where nothing was.</summary>
    /// <example>20000</example>
    public string? Given { get; init; }

    /// <summary>What is allowed there, with its unit.</summary>
    /// <example>1 to 10000 kg</example>
    public required string Allowed { get; init; }

    /// <summary>The same as a sentence.</summary>
    /// <example>batch.green_weight_kg is 20000; allowed is 1 to 10000 kg.</example>
    public required string Message { get; init; }

    /// <summary>What the field has to look like, where that is what it failed; null where it does not fit another field.</summary>
    internal Shape? Expected { get; init; }

    public static FieldError Of(string field, JsonElement given, string allowed) =>
        Of(field, given.ValueKind == JsonValueKind.String ? $"\"{given.GetString()}\"" : given.GetRawText(), allowed);

    public static FieldError Of(string field, string given, string allowed)
    {
        string shown = given.Length <= LongestShown ? given : given[..LongestShown] + "…";
        string named = field.Length > 0 ? field : "body";
        return new() { Field = named, Given = shown, Allowed = allowed, Message = $"{named} is {shown}; allowed is {allowed}." };
    }

    public static FieldError Missing(string field, string allowed) =>
        new() { Field = field, Allowed = allowed, Message = $"{field} is missing; give {allowed}." };

    public static FieldError Unknown(string field, JsonElement given, IEnumerable<string> known)
    {
        FieldError error = Of(field, given, "one of the fields: " + string.Join(", ", known));
        return error with { Message = $"{error.Field} is not known; allowed is {error.Allowed}." };
    }

    /// <summary>The same error, seen from outside the object or list that it was found in.</summary>
    public FieldError Inside(string outer) => At(FieldPath.Join(outer, Field));

    /// <summary>The same error under another name of its field.</summary>
    public FieldError At(string field) => this with { Field = field, Message = field + Message[Field.Length..] };
}
