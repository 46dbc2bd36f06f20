using System.Collections.Concurrent;
using System.Reflection;
using System.Runtime.CompilerServices;
using System.Text.Json;

namespace WitherAdvisor.Fields;

/// <summary>Reads the shape of a request from its type: names, ranges, what is required.</summary>
internal static class Shapes
{
    /// <summary>Most items in a list that is the whole body.</summary>
    public const int LongestBody = 5000;

    private static readonly ConcurrentDictionary<Type, Shape> Known = new();

    public static Shape Of(Type type) => Known.GetOrAdd(type, Read);

    /// <summary>The shape of one field; its name is the property's in snake_case.</summary>
    public static FieldShape Of(PropertyInfo property)
    {
        string name = JsonNamingPolicy.SnakeCaseLower.ConvertName(property.Name);
        bool required = property.IsDefined(typeof(RequiredMemberAttribute));
        return new(name, property, required, Read(property, name));
    }

    private static Shape Read(Type type) =>
        ItemType(type) is { } item
            ? new ListShape(Of(item), 1, LongestBody)
            : new ObjectShape([.. type.GetProperties().Where(IsSettable).Select(Of)]);

    private static Shape Read(PropertyInfo property, string name)
    {
        ListedAttribute? listed = property.GetCustomAttribute<ListedAttribute>();
        Type? item = ItemType(property.PropertyType);
        return item is null
            ? Read(property.PropertyType, property, name)
            : new ListShape(Read(item, property, name), listed!.Fewest, listed.Most);
    }

    private static Shape Read(Type declared, PropertyInfo property, string name)
    {
        Type type = Nullable.GetUnderlyingType(declared) ?? declared;
        return type switch
        {
            _ when type == typeof(double) || type == typeof(int) => Number(property, name, type == typeof(int)),
            _ when type == typeof(string) => Text(property),
            _ when type == typeof(DateTimeOffset) => new InstantShape(),
            { IsEnum: true } => new ChoiceShape([.. Enum.GetNames(type).Select(JsonNamingPolicy.SnakeCaseLower.ConvertName)]),
            _ => Of(type),
        };
    }

    private static NumberShape Number(PropertyInfo property, string name, bool whole)
    {
        MeasuredAttribute range = property.GetCustomAttribute<MeasuredAttribute>()!;
        return new(range.Least, range.Most, Unit.OfName(name)?.Symbol, whole);
    }

    private static TextShape Text(PropertyInfo property)
    {
        TextAttribute text = property.GetCustomAttribute<TextAttribute>()!;
        return new(text.Longest, text.Pattern);
    }

    private static bool IsSettable(PropertyInfo property) => property.SetMethod is { IsPublic: true };

    private static Type? ItemType(Type type) =>
        type.IsGenericType && type.GetGenericTypeDefinition() == typeof(IReadOnlyList<>)
            ? type.GetGenericArguments()[0]
            : null;
}
