using System.Reflection;

namespace WitherAdvisor.Mutants.Trying;

/// <summary>A test with the data it is given.</summary>
/// <param name="Name">Class, method, and the number of the row of data.</param>
/// <param name="Method">The test.</param>
/// <param name="Arguments">Its data.</param>
internal sealed record TestCase(string Name, MethodInfo Method, object?[] Arguments)
{
    /// <summary>Why it fails; null when it passes.</summary>
    public string? Failure()
    {
        try
        {
            object? made = Method.IsStatic ? null : TestClasses.Make(Method.ReflectedType!);
            Finish(Method.Invoke(made, BindingFlags.DoNotWrapExceptions, null, Arguments, null));
            (made as IDisposable)?.Dispose();
            return null;
        }
#pragma warning disable CA1031 // whatever a mutant throws, it was noticed
        catch (Exception thrown)
#pragma warning restore CA1031
        {
            return $"{thrown.GetType().Name}: {thrown.Message.ReplaceLineEndings(" ")}";
        }
    }

    private static void Finish(object? returned)
    {
        if (returned is Task task)
        {
            task.GetAwaiter().GetResult();
        }
    }
}
