using System.Globalization;
using WitherAdvisor.Bed;
using WitherAdvisor.ReferenceChecks.Cases;
using WitherAdvisor.ReferenceChecks.Report;

namespace WitherAdvisor.ReferenceChecks.SlowBed;

/// <summary>The library's bed beside the slow solver over random withers, and how its error falls with its steps.</summary>
public static class BedSection
{
    private const int Withers = 1_000;
    private const string Source = "SlowBed/AirMarch.cs";

    private static readonly SlowGrid Grid = new(65, 20);

    private static readonly Cut[] Cuts =
    [
        new("cut finely", new(50, 60),
            Tolerance.Of("relative", 0.0005, "the library reads the slope of saturation off a table within 0.05 %"),
            Tolerance.Of("absolute", 0.05, "0.05 % of the hours, where leaf dries fastest")),
        new("as shown", BedResolution.Shown,
            Tolerance.Of("relative", 0.005, "the plan that is shown may be off by 0.5 % of its hours for its cut"),
            Tolerance.Of("absolute", 0.4, "0.5 % of the hours, where leaf dries fastest")),
        new("as searched", BedResolution.Search,
            Tolerance.Of("absolute", 0.5, "a seventh of the ready-time band, which alone rests on it; the plan that the search finds is worked out again as shown"),
            Tolerance.Of("absolute", 2, "what the leaf loses in a step of 20 min, where it dries fastest")),
    ];

    public static Section Run()
    {
        IReadOnlyList<BedWither> withers = RandomWithers.Draw(Withers);
        BedCourse[] slow = [.. withers.AsParallel().AsOrdered().Select(wither => SlowBedSolver.Solve(wither, Grid))];
        List<CheckRow> rows = [.. Cuts.SelectMany(cut => Rows(cut, withers, slow))];
        return new(
            $"Leaf bed: {Withers:N0} random withers by a second solver",
            $"The equations solved again and plainly: {Grid.Nodes} heights, {Grid.StepsPerHour} steps an hour, Runge–Kutta of fourth order by MathNet.Numerics (MIT). "
            + $"It shares no code with the library. Seed {RandomWithers.Seed}; weather, leaf, trough and every coefficient drawn over their whole ranges (`SlowBed/RandomWithers.cs`).",
            rows,
            [.. Shares(rows), .. Convergence.Lines(withers)]);
    }

    private static IEnumerable<CheckRow> Rows(Cut cut, IReadOnlyList<BedWither> withers, BedCourse[] slow)
    {
        BedCourse[] fast = [.. withers.AsParallel().AsOrdered().Select(wither => FastBed.Solve(wither, cut.Resolution))];
        for (int i = 0; i < withers.Count; i++)
        {
            string where = $"wither {i}";
            // Within a tolerance of the horizon one solver may reach the target and the other not.
            if (slow[i].HoursToTarget is { } theirs and < BedWither.HorizonHours - 0.5)
            {
                yield return new($"hours to target, {cut.Named}", where, Source, fast[i].HoursToTarget ?? double.NaN, theirs, cut.Hours);
            }

            (double ourMoisture, double theirMoisture) = fast[i].MeanMoistureByHour.Zip(slow[i].MeanMoistureByHour)
                .MaxBy(pair => Math.Abs(pair.First - pair.Second));
            yield return new($"moisture in % at its worst hour, {cut.Named}", where, Source, 100 * ourMoisture, 100 * theirMoisture, cut.Moisture);
        }
    }

    private static IEnumerable<string> Shares(IEnumerable<CheckRow> rows) =>
    [
        "",
        "How far off, of a hundred withers:",
        "",
        "| check | 50 within | 95 within | 99 within | all within |",
        "|---|--:|--:|--:|--:|",
        .. rows.GroupBy(row => row.Check).Select(check =>
        {
            double[] off = [.. check.Select(row => Math.Abs(row.Difference)).Order()];
            return $"| {check.Key} | {At(off, 0.5)} | {At(off, 0.95)} | {At(off, 0.99)} | {At(off, 1)} |";
        }),
    ];

    private static string At(double[] sorted, double share) => Numbers.Fixed(sorted[(int)(share * (sorted.Length - 1))], 3);

    private sealed record Cut(string Name, BedResolution Resolution, Tolerance Hours, Tolerance Moisture)
    {
        public string Named => $"{Name} ({Resolution.Layers} layers, {Resolution.LongestStepS.ToString(CultureInfo.InvariantCulture)} s)";
    }
}
