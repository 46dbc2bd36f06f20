using System.Reflection;
using WitherAdvisor.Leaf;
using WitherAdvisor.Loft.Kept.Batches;
using WitherAdvisor.Loft.Kept.Sites;
using WitherAdvisor.Sites;

namespace WitherAdvisor.Store.Contract;

/// <summary>Invented records in which every field differs from its default and from every other, found by reflection:
/// a field that the domain gains and the store forgets fails the round trips.</summary>
public static class Invented
{
    public static readonly DateTimeOffset Monday = new(2031, 3, 10, 6, 0, 0, TimeSpan.FromMinutes(330));

    public static StoredSite Site(string id) => Filled<StoredSite>() with { Id = id };

    public static StoredTrough Trough(string siteId, string id) => Filled<StoredTrough>() with { SiteId = siteId, Id = id };

    public static StoredBatch Batch(string id, string siteId = "hill", string troughId = "t1") =>
        Filled<StoredBatch>() with { Id = id, SiteId = siteId, TroughId = troughId, UnloadedAt = null, Ended = null, EndReason = null, MixedIntoId = null };

    public static StoredBatch LoadedAt(this StoredBatch stored, DateTimeOffset loadedAt) =>
        stored with { Batch = stored.Batch with { LoadedAt = loadedAt } };

    public static MadeAdvice AdviceFor(string id, string batchId, DateTimeOffset? madeAt = null)
    {
        KeptAdvice kept = Filled<KeptAdvice>() with { Id = id, BatchId = batchId };
        kept = kept with { MadeAt = madeAt ?? kept.MadeAt };
        return new(kept, Filled<AdviceFigures>() with { AdviceId = id, BatchId = batchId, MadeAt = kept.MadeAt });
    }

    /// <summary>A record with every field filled; another start fills each field otherwise.</summary>
    public static T Filled<T>(int start = 0) => (T)Make(typeof(T), new Count { Value = start }, nullsWhereAllowed: false)!;

    /// <summary>The same with null wherever null is allowed.</summary>
    public static T Sparse<T>() => (T)Make(typeof(T), new Count(), nullsWhereAllowed: true)!;

    private static object? Make(Type type, Count count, bool nullsWhereAllowed)
    {
        var next = ++count.Value;
        return type switch
        {
            _ when type == typeof(string) => $"text {next}, Ünïcødé 茶 'quoted' \"double\" ; --",
            _ when type == typeof(bool) => true,
            _ when type == typeof(double) => next + (1.0 / 3),
            _ when type == typeof(int) => next,
            _ when type == typeof(DateTimeOffset) => Monday.AddMinutes(next).AddMilliseconds(next),
            // When there is heat, and at what price, is said with a night and not kept with the site.
            _ when type == typeof(HeatSource) => new HeatSource { LoftKW = nullsWhereAllowed ? null : next + (1.0 / 3) },
            _ when type == typeof(IReadOnlyList<LeafLot>) => nullsWhereAllowed
                ? Array.Empty<LeafLot>()
                : new[] { (LeafLot)Make(typeof(LeafLot), count, false)!, (LeafLot)Make(typeof(LeafLot), count, false)! },
            _ when type.IsEnum => Enum.GetValuesAsUnderlyingType(type).Cast<object>().Select(value => Enum.ToObject(type, value)).Last(),
            _ when Nullable.GetUnderlyingType(type) is { } known => Make(known, count, nullsWhereAllowed),
            _ => Record(type, count, nullsWhereAllowed),
        };
    }

    private static object Record(Type type, Count count, bool nullsWhereAllowed)
    {
        var constructor = type.GetConstructors().Single();
        var context = new NullabilityInfoContext();
        var made = constructor.Invoke([.. constructor.GetParameters().Select(parameter =>
            nullsWhereAllowed && context.Create(parameter).WriteState == NullabilityState.Nullable
                ? null
                : Make(parameter.ParameterType, count, nullsWhereAllowed))]);
        foreach (var property in type.GetProperties(BindingFlags.Public | BindingFlags.Instance).Where(property =>
            property.CanWrite && !constructor.GetParameters().Any(parameter => parameter.Name == property.Name)))
        {
            property.SetValue(made, Make(property.PropertyType, count, nullsWhereAllowed));
        }

        return made;
    }

    private sealed class Count
    {
        public int Value { get; set; }
    }
}
