using BenchmarkDotNet.Columns;
using BenchmarkDotNet.Configs;
using BenchmarkDotNet.Diagnosers;
using BenchmarkDotNet.Exporters;
using BenchmarkDotNet.Jobs;
using BenchmarkDotNet.Loggers;
using BenchmarkDotNet.Running;
using BenchmarkDotNet.Toolchains.InProcess.Emit;
using Perfolizer.Horology;
using WitherAdvisor.Benchmarks;

const string Short = "--short";
if (args.Contains("--recalibration"))
{
    RecalibrationTimes.Print();
    return;
}

// In this very process: a build and a start for each benchmark would take longer than the benchmarks.
Job job = (args.Contains(Short)
        ? Job.ShortRun.WithIterationTime(TimeInterval.FromMilliseconds(200))
        : Job.MediumRun.WithLaunchCount(1))
    .WithToolchain(InProcessEmitToolchain.Instance);
ManualConfig config = ManualConfig.CreateEmpty()
    .AddJob(job)
    .AddColumnProvider(DefaultColumnProviders.Instance)
    .AddColumn(new CandidatesColumn())
    .AddDiagnoser(MemoryDiagnoser.Default)
    .AddExporter(MarkdownExporter.Console)
    .AddLogger(ConsoleLogger.Default)
    .HideColumns(Column.Job, Column.Error, Column.Gen0, Column.Gen1, Column.RatioSD);
string[] rest = [.. args.Where(arg => arg != Short)];
BenchmarkSwitcher.FromAssembly(typeof(CandidatesColumn).Assembly).Run(rest.Length > 0 ? rest : ["--filter", "*"], config);
