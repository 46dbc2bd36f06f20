using System.Reflection;

namespace WitherAdvisor.Store.Contract;

/// <summary>The suites of the contract, so that a store's own project can see that it runs all of them.</summary>
public static class StoreSuites
{
    public static IReadOnlyList<Type> All { get; } =
        [.. typeof(StoreSuites).Assembly.GetExportedTypes().Where(IsSuite).OrderBy(suite => suite.Name, StringComparer.Ordinal)];

    /// <summary>Names of the suites that no class of an assembly derives from.</summary>
    public static IEnumerable<string> NotRunBy(Assembly tests)
    {
        HashSet<Type> run = [.. tests.GetTypes().Where(type => !type.IsAbstract).Select(type => type.BaseType)
            .OfType<Type>().Where(type => type.IsGenericType).Select(type => type.GetGenericTypeDefinition())];
        return All.Where(suite => !run.Contains(suite)).Select(suite => suite.Name);
    }

    private static bool IsSuite(Type type) =>
        type.BaseType is { IsGenericType: true } parent && parent.GetGenericTypeDefinition() == typeof(StoreSuite<>);
}
