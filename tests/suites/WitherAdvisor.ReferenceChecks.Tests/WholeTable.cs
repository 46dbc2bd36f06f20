using WitherAdvisor.ReferenceChecks.Report;

namespace WitherAdvisor.ReferenceChecks.Tests;

/// <summary>The whole table, worked out once for all tests.</summary>
public sealed class WholeTable
{
    public IReadOnlyList<Section> Sections { get; } = AllChecks.Run();
}
