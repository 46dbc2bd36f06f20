using BenchmarkDotNet.Attributes;
using WitherAdvisor.Advice;
using WitherAdvisor.Leaf;
using WitherAdvisor.LeafAtLoading;

namespace WitherAdvisor.Benchmarks;

/// <summary>A whole advice, and of it the weather part alone, beside one bed cut as anybody would begin.</summary>
public class AdviseBenchmarks
{
    private BenchmarkedBatch batch = null!;
    private AdviceRequest tenWeeks = null!;

    [Params("rain-wet", "dry-windy", "ordinary")]
    public string Batch { get; set; } = "";

    [GlobalSetup]
    public void Read()
    {
        batch = new(Batch);
        tenWeeks = batch.RequestWithTenWeeksOfReadings;
    }

    [Benchmark(Baseline = true)]
    public double? OneBedAtReferenceCut() => batch.HoursToTarget(BenchmarkedBatch.ReferenceCut);

    [Benchmark]
    public AdviceOutcome Advise() => Advisor.Advise(batch.Request);

    [Benchmark]
    public AdviceOutcome AdviseOnTenWeeksOfReadings() => Advisor.Advise(tenWeeks);

    [Benchmark]
    public LeafEstimate WeatherAlone() => batch.Leaf();
}
