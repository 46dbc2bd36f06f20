using WitherAdvisor.Sites;

namespace WitherAdvisor.PlanSweep;

/// <summary>The situations that are put to the planner: climates, loads, leaf, fans, heaters, wishes, age and pace.</summary>
public static class Situations
{
    private static readonly (double Moisture, double SurfaceWater)[] Leaves = [(0.74, 0), (0.775, 0.05), (0.80, 0.20)];
    private static readonly double[] LoadsKgPerM2 = [12, 22, 32];

    public static IReadOnlyList<Situation> All { get; } =
    [
        .. from climate in Climate.All
           from leaf in Leaves
           from load in LoadsKgPerM2
           from situation in Variants(new(climate, load, leaf.Moisture, leaf.SurfaceWater, 17, 8, 1, null, null))
           select situation,
    ];

    /// <summary>The same with a little more of one thing: a hundredth of leaf, a tenth of a kelvin, a tenth of a point.</summary>
    public static IEnumerable<Situation> Nudged(Situation situation) =>
    [
        situation with { LoadKgPerM2 = situation.LoadKgPerM2 * 1.01 },
        situation with { Climate = situation.Climate with { LowC = situation.Climate.LowC + 0.1, HighC = situation.Climate.HighC + 0.1 } },
        situation with { Moisture = situation.Moisture + 0.001 },
    ];

    private static IEnumerable<Situation> Variants(Situation plain) =>
    [
        plain,
        plain with { LoadedHour = 11, SlowestFan = 0.5 },
        plain with { HeaterKW = 25 },
        plain with { HeaterKW = 0 },
        plain with { ReadyByHours = 7 },
        plain with { ReadyByHours = 14, SlowestFan = 0.5 },
        plain with { HoursSincePlucking = 20 },
        plain with { Pace = WitherPace.Sparing },
        plain with { Pace = WitherPace.Fast },
    ];
}
