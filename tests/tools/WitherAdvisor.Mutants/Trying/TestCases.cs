using System.Reflection;
using Xunit;
using Xunit.Sdk;
using Xunit.v3;

namespace WitherAdvisor.Mutants.Trying;

/// <summary>Facts and theories of an assembly. Properties stay out: thousands of cases for each mutant would take days.</summary>
internal static class TestCases
{
    public static IReadOnlyList<TestCase> Of(Assembly tests) =>
    [
        .. from type in tests.GetTypes()
           where type is { IsClass: true, IsAbstract: false, IsPublic: true }
           from method in type.GetMethods()
           from test in Of(type, method)
           select test,
    ];

    private static IEnumerable<TestCase> Of(Type type, MethodInfo method)
    {
        string name = $"{type.FullName}.{method.Name}";
        return method.GetCustomAttribute<FactAttribute>() switch
        {
            TheoryAttribute => Rows(type, method).Select((row, number) => new TestCase($"{name}#{number}", method, row)),
            { } fact when fact.GetType() == typeof(FactAttribute) => [new TestCase(name, method, [])],
            _ => [],
        };
    }

    private static IEnumerable<object?[]> Rows(Type type, MethodInfo method)
    {
        DisposalTracker tracker = new();
        foreach (DataAttribute data in method.GetCustomAttributes<DataAttribute>())
        {
            if (data is MemberDataAttribute member)
            {
                member.MemberType ??= type;
            }

            foreach (ITheoryDataRow row in data.GetData(method, tracker).AsTask().GetAwaiter().GetResult())
            {
                yield return Fitted(row.GetData(), method.GetParameters());
            }
        }
    }

    private static object?[] Fitted(object?[] data, ParameterInfo[] parameters) =>
        [.. parameters.Select((parameter, i) => i < data.Length ? Fitted(data[i], parameter.ParameterType) : parameter.DefaultValue)];

    /// <summary>A whole number may be written where a double is wanted.</summary>
    private static object? Fitted(object? value, Type wanted)
    {
        Type type = Nullable.GetUnderlyingType(wanted) ?? wanted;
        return value is IConvertible && type.IsPrimitive && !type.IsInstanceOfType(value) ? Convert.ChangeType(value, type) : value;
    }
}
