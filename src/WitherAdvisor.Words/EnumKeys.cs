using System.Collections.Frozen;
using System.Text.Json;

namespace WitherAdvisor.Words;

/// <summary>Keys of members of enumerations: type and member in snake_case, "limit_kind.plenum_dry_bulb".</summary>
internal static class EnumKeys
{
    public static string Of<T>(T member)
        where T : struct, Enum => Cache<T>.Keys[member];

    public static string OfMember(Type type, object member) =>
        $"{JsonNamingPolicy.SnakeCaseLower.ConvertName(type.Name)}.{JsonNamingPolicy.SnakeCaseLower.ConvertName(member.ToString()!)}";

    private static class Cache<T>
        where T : struct, Enum
    {
        public static readonly FrozenDictionary<T, string> Keys =
            Enum.GetValues<T>().ToFrozenDictionary(member => member, member => OfMember(typeof(T), member));
    }
}
