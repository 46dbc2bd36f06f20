using WitherAdvisor.Air;
using Xunit;

namespace WitherAdvisor.Tests;

/// <summary>Not a test: keeps the library that dotnet-stryker mutated, which it takes away when it ends. See tests/mutate.</summary>
public sealed class MutatedLibrary
{
    [Fact]
    public void Is_kept()
    {
        if (Environment.GetEnvironmentVariable("MUTATED_LIBRARY") is { } path)
        {
            File.Copy(typeof(AirState).Assembly.Location, path, overwrite: true);
        }
    }
}
