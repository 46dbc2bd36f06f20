using WitherAdvisor.ReferenceChecks.Cases;
using WitherAdvisor.ReferenceChecks.Psychrolib;
using WitherAdvisor.ReferenceChecks.Report;
using WitherAdvisor.ReferenceChecks.Runners;
using WitherAdvisor.ReferenceChecks.SlowAir;
using WitherAdvisor.ReferenceChecks.SlowBed;

namespace WitherAdvisor.ReferenceChecks;

/// <summary>Everything that ours is held against.</summary>
public static class AllChecks
{
    /// <summary>Where the table is kept, from the root of the repository.</summary>
    public const string Document = "tests/tools/WitherAdvisor.ReferenceChecks/CHECKS.md";

    public static IReadOnlyList<Section> Run() =>
        [.. CaseFiles.All.Select(AllRunners.Run), PsychrolibSection.Run(), WetBulbSection.Run(), BedSection.Run()];
}
