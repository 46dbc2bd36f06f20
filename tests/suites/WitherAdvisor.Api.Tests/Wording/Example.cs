using System.Reflection;

namespace WitherAdvisor.Api.Tests.Wording;

/// <summary>Some value of a case, whatever its arguments are.</summary>
internal static class Example
{
    public static object Of(Type ofCase)
    {
        ConstructorInfo made = ofCase.GetConstructors().Single();
        return made.Invoke([.. made.GetParameters().Select(parameter => Argument(parameter.ParameterType))]);
    }

    private static object? Argument(Type type) => (Nullable.GetUnderlyingType(type) ?? type) switch
    {
        { } text when text == typeof(string) => "something",
        { } number when number == typeof(int) => 3,
        { } number when number == typeof(long) => 3L,
        { } number when number == typeof(double) => 2.5,
        { } flag when flag == typeof(bool) => true,
        { } time when time == typeof(DateTimeOffset) => new DateTimeOffset(2026, 11, 25, 2, 0, 0, TimeSpan.Zero),
        { } span when span == typeof(TimeSpan) => TimeSpan.FromHours(30),
        { IsEnum: true } choice => Enum.GetValues(choice).GetValue(0),
        { IsAbstract: true } => null,
        var other => throw new NotSupportedException($"No example of {other}."),
    };
}
