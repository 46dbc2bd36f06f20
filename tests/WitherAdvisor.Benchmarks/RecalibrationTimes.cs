using System.Diagnostics;
using WitherAdvisor.InventedEstate;
using WitherAdvisor.Recalibration;
using WitherAdvisor.Recalibration.Learning;
using WitherAdvisor.SyntheticSeasons;

namespace WitherAdvisor.Benchmarks;

/// <summary>Seconds of a whole recalibration, hold-out and report with it, by outcomes: one cold run of each size, as a job has it.</summary>
internal static class RecalibrationTimes
{
    private const int Nights = 1_000;
    private static readonly int[] Sizes = [1_000, 3_000, 10_000];

    public static void Print()
    {
        IReadOnlyList<LoftNight> nights = LoftNight.Make(Nights, 730, 1);
        var random = new SplitMix64(2);
        HiddenLoft loft = HiddenLoft.Draw(random);
        Console.WriteLine("| outcomes | s | CPU s | s per 1,000 | ratio to 1,000, CPU | iterations | converged |");
        Console.WriteLine("|---|---|---|---|---|---|---|");
        double first = 0;
        foreach (int size in Sizes)
        {
            ObservedWither[] log = Log(loft, nights, size, random);
            TimeSpan cpuBefore = Process.GetCurrentProcess().TotalProcessorTime;
            var watch = Stopwatch.StartNew();
            RecalibrationResult result = SiteRecalibration.Run(log, new());
            double seconds = watch.Elapsed.TotalSeconds;
            double cpu = (Process.GetCurrentProcess().TotalProcessorTime - cpuBefore).TotalSeconds;
            first = first == 0 ? cpu : first;
            Console.WriteLine(
                $"| {size} | {seconds:0.0} | {cpu:0.0} | {1_000 * seconds / size:0.00} | {cpu / first:0.0} | {result.Report.Iterations} | {result.Report.Converged} |");
        }
    }

    /// <summary>The same nights over and over, each time with other leaf, each time some years later.</summary>
    private static ObservedWither[] Log(HiddenLoft loft, IReadOnlyList<LoftNight> nights, int size, SplitMix64 random) =>
    [
        .. OutcomeLog.Write(loft, [.. Enumerable.Range(0, size).Select(i => nights[i % Nights])], random)
            .Select((one, i) => one.Noted with { LoadedAt = one.Noted.LoadedAt.AddYears(2 * (i / Nights)) }),
    ];
}
