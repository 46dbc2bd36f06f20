using BenchmarkDotNet.Columns;
using BenchmarkDotNet.Reports;
using BenchmarkDotNet.Running;
using WitherAdvisor.Advice;
using WitherAdvisor.Leaf;

namespace WitherAdvisor.Benchmarks;

/// <summary>Candidate plans simulated for the advice that a line measures.</summary>
internal sealed class CandidatesColumn : IColumn
{
    public string Id => nameof(CandidatesColumn);

    public string ColumnName => "Candidates";

    public string Legend => "Beds simulated for one advice: candidate plans, effects and the cases of its uncertainty";

    public bool AlwaysShow => false;

    public ColumnCategory Category => ColumnCategory.Custom;

    public int PriorityInCategory => 0;

    public bool IsNumeric => true;

    public UnitType UnitType => UnitType.Dimensionless;

    public bool IsAvailable(Summary summary) => summary.BenchmarksCases.Any(benchmarkCase => Measured(benchmarkCase) is not null);

    public bool IsDefault(Summary summary, BenchmarkCase benchmarkCase) => false;

    public string GetValue(Summary summary, BenchmarkCase benchmarkCase) =>
        Measured(benchmarkCase) is { } request ? Advisor.Advise(request).CandidatesSimulated.ToString() : "";

    public string GetValue(Summary summary, BenchmarkCase benchmarkCase, SummaryStyle style) => GetValue(summary, benchmarkCase);

    private static AdviceRequest? Measured(BenchmarkCase benchmarkCase) => benchmarkCase.Descriptor.WorkloadMethod.Name switch
    {
        nameof(AdviseBenchmarks.Advise) => Batch(benchmarkCase).Request,
        nameof(AdviseBenchmarks.AdviseOnTenWeeksOfReadings) => Batch(benchmarkCase).RequestWithTenWeeksOfReadings,
        _ => null,
    };

    private static BenchmarkedBatch Batch(BenchmarkCase benchmarkCase) =>
        new((string)benchmarkCase.Parameters[nameof(AdviseBenchmarks.Batch)]);
}
