using System.Reflection;
using Xunit;

namespace WitherAdvisor.Mutants.Trying;

/// <summary>Makes test classes as the test framework would; what they print goes nowhere.</summary>
internal static class TestClasses
{
    public static object Make(Type type)
    {
        ConstructorInfo constructor = type.GetConstructors().Single();
        object[] arguments = [.. constructor.GetParameters().Select(parameter => parameter.ParameterType == typeof(ITestOutputHelper)
            ? (object)new Nowhere()
            : throw new NotSupportedException($"{type.Name} wants a {parameter.ParameterType.Name}, which only the test framework can give."))];
        return constructor.Invoke(BindingFlags.DoNotWrapExceptions, null, arguments, null);
    }

    private sealed class Nowhere : ITestOutputHelper
    {
        public string Output => "";

        public void Write(string message)
        {
        }

        public void Write(string format, params object[] args)
        {
        }

        public void WriteLine(string message)
        {
        }

        public void WriteLine(string format, params object[] args)
        {
        }
    }
}
