using BenchmarkDotNet.Attributes;
using WitherAdvisor.Bed;

namespace WitherAdvisor.Benchmarks;

/// <summary>One bed dried to its target, rain-wet leaf, by how finely it is cut.</summary>
public class BedBenchmarks
{
    private readonly BenchmarkedBatch batch = new("rain-wet");

    [Benchmark(Baseline = true)]
    public double? ReferenceCut() => batch.HoursToTarget(BenchmarkedBatch.ReferenceCut);

    [Benchmark]
    public double? Shown() => batch.HoursToTarget(BedResolution.Shown);

    [Benchmark]
    public double? Search() => batch.HoursToTarget(BedResolution.Search);
}
