using System.Globalization;
using WitherAdvisor.Bed;
using WitherAdvisor.ReferenceChecks.Report;

namespace WitherAdvisor.ReferenceChecks.SlowBed;

/// <summary>How the error of the library's bed falls as its layers and its steps in time are halved.</summary>
public static class Convergence
{
    private const int WithersOfAKind = 16;

    /// <summary>Shorter ones end within a step or two of the coarsest cut.</summary>
    private const double ShortestHours = 2;

    private static readonly SlowGrid FineGrid = new(129, 60);

    public static IReadOnlyList<string> Lines(IReadOnlyList<BedWither> withers) =>
    [
        .. Table("dry leaf", OfAKind(withers, wet: false)),
        .. Table("leaf with water on it", OfAKind(withers, wet: true)),
    ];

    private static List<string> Table(string kind, List<BedWither> withers)
    {
        double[] slow = [.. withers.AsParallel().AsOrdered().Select(wither => SlowBedSolver.Solve(wither, FineGrid).HoursToTarget!.Value)];
        return
        [
            "",
            $"Error of hours to target, {withers.Count} of these withers, {kind}: root mean square. The order is that of the last error, from one line to the next.",
            "",
            "| layers | step, s | off the slow solver | off its own finest cut | order |",
            "|--:|--:|--:|--:|--:|",
            .. Series(withers, slow, new[] { 4, 8, 16, 32 }.Select(layers => new BedResolution(layers, 60)), new(256, 60)),
            .. Series(withers, slow, new double[] { 1_200, 600, 300, 150 }.Select(step => new BedResolution(50, step)), new(50, 10)),
        ];
    }

    private static IEnumerable<string> Series(
        List<BedWither> withers, double[] slow, IEnumerable<BedResolution> cuts, BedResolution finest)
    {
        double[] finestHours = Hours(withers, finest);
        double? before = null;
        foreach (BedResolution cut in cuts)
        {
            double[] hours = Hours(withers, cut);
            double off = Off(hours, finestHours);
            string order = before is { } coarser ? Numbers.Fixed(Math.Log2(coarser / off), 1) : "";
            before = off;
            yield return $"| {cut.Layers} | {cut.LongestStepS.ToString(CultureInfo.InvariantCulture)} | {Percent(Off(hours, slow))} | {Percent(off)} | {order} |";
        }
    }

    private static List<BedWither> OfAKind(IReadOnlyList<BedWither> withers, bool wet) =>
        [.. withers.Where(wither => (wither.Leaf.SurfaceWaterKgPerKg > 0) == wet)
            .Where(wither => FastBed.Solve(wither, BedResolution.Shown).HoursToTarget > ShortestHours)
            .Take(WithersOfAKind)];

    private static double[] Hours(List<BedWither> withers, BedResolution cut) =>
        [.. withers.AsParallel().AsOrdered().Select(wither => FastBed.Solve(wither, cut).HoursToTarget!.Value)];

    private static double Off(double[] hours, double[] reference) =>
        Math.Sqrt(hours.Zip(reference, (ours, theirs) => Math.Pow(ours / theirs - 1, 2)).Average());

    private static string Percent(double share) => Numbers.Fixed(100 * share, 3) + " %";
}
