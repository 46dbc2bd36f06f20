using Xunit;

namespace WitherAdvisor.Process.Tests;

/// <summary>Tests that start services of their own or import much; they run one after another, when the browser is done.</summary>
[CollectionDefinition(Name, DisableParallelization = true)]
public sealed class Alone
{
    public const string Name = "Alone";
}
