using System.Text.Json;
using System.Text.Json.Serialization.Metadata;

namespace WitherAdvisor.Loft.Kept;

/// <summary>
/// Keeps a value of a closed family of cases (a record whose cases stand inside it) as its code, which is the name of the
/// case in snake_case, and its arguments. So a name of a case or of an argument, once kept, is for ever.
/// </summary>
public static class ClosedFamilyJson
{
    /// <summary>Of the member that tells the case.</summary>
    public const string CodeName = "code";

    /// <summary>How values of some families, and whatever holds them, are written and read.</summary>
    public static JsonSerializerOptions Of(params Type[] families)
    {
        JsonSerializerOptions options = new() { PropertyNamingPolicy = JsonNamingPolicy.SnakeCaseLower, TypeInfoResolver = Resolver(families) };
        options.MakeReadOnly();
        return options;
    }

    /// <summary>For options that have other rules of their own; names are to be in snake_case.</summary>
    public static IJsonTypeInfoResolver Resolver(params Type[] families)
    {
        var resolver = new DefaultJsonTypeInfoResolver();
        resolver.Modifiers.Add(type => Tell(type, families));
        return resolver;
    }

    /// <summary>The cases of a family.</summary>
    public static IEnumerable<Type> Cases(Type family) =>
        family.GetNestedTypes().Where(type => type is { IsAbstract: false } && type.IsSubclassOf(family));

    /// <summary>The code of a case.</summary>
    public static string Code(Type ofCase) => JsonNamingPolicy.SnakeCaseLower.ConvertName(ofCase.Name);

    private static void Tell(JsonTypeInfo type, Type[] families)
    {
        if (families.Contains(type.Type))
        {
            type.PolymorphismOptions = new() { TypeDiscriminatorPropertyName = CodeName };
            foreach (Type one in Cases(type.Type))
            {
                type.PolymorphismOptions.DerivedTypes.Add(new(one, Code(one)));
            }
        }

        // A case may tell its own code, which stands there already.
        if (families.Any(family => family.IsAssignableFrom(type.Type)) && type.Properties.FirstOrDefault(one => one.Name == CodeName) is { } code)
        {
            type.Properties.Remove(code);
        }
    }
}
