namespace WitherAdvisor.InventedEstate;

/// <summary>The bones of a day of weather, from which its hours are made.</summary>
/// <param name="LowestC">Dry bulb at six in the morning.</param>
/// <param name="HighestC">Dry bulb at two in the afternoon.</param>
/// <param name="DewPointC">Mean dew point.</param>
/// <param name="Cloud">0 clear to 1 overcast.</param>
/// <param name="NightWindMPerS">Wind before dawn, at 10 m.</param>
/// <param name="DayWindMPerS">Wind in the afternoon, at 10 m.</param>
/// <param name="Showers">Its rain.</param>
public sealed record Day(
    double LowestC,
    double HighestC,
    double DewPointC,
    double Cloud,
    double NightWindMPerS,
    double DayWindMPerS,
    params IReadOnlyList<Shower> Showers)
{
    /// <summary>A day of the same kind that is not quite the same.</summary>
    public Day Varied(SplitMix64 random) => this with
    {
        LowestC = random.Around(LowestC, 0.5),
        HighestC = random.Around(HighestC, 0.7),
        DewPointC = random.Around(DewPointC, 0.4),
        Cloud = Math.Clamp(random.Around(Cloud, 0.08), 0, 1),
        NightWindMPerS = Math.Max(random.Around(NightWindMPerS, 0.3), 0.2),
        DayWindMPerS = Math.Max(random.Around(DayWindMPerS, 0.6), 0.4),
    };
}
