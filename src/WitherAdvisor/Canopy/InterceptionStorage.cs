using WitherAdvisor.Evaporation;

namespace WitherAdvisor.Canopy;

/// <summary>Water on leaf of the canopy as it was plucked, mm, with what the open questions of its weather may change.</summary>
/// <param name="Best">The run of best knowledge.</param>
/// <param name="Fog">What fog and drizzle laid.</param>
/// <param name="RainMm">From rain, mean over the plucking.</param>
/// <param name="DewMm">From dew.</param>
/// <param name="FogMm">From fog and drizzle.</param>
/// <param name="UnknownRainMm">What rain in all unknown hours would add.</param>
/// <param name="DryingErrorMm">Standard deviation by how fast it dried and how much fog laid.</param>
internal sealed record InterceptionStorage(
    CanopyRun Best, FogDeposit Fog, double RainMm, double DewMm, double FogMm, double UnknownRainMm, double DryingErrorMm)
{
    /// <summary>A canopy forgets in days: the drying trials start this long before the end, hours.</summary>
    private const int TrialH = 240;

    /// <summary>Runs the canopy as known and, to see what the open questions do, as it may also have been.</summary>
    /// <param name="capacityMm">Most that leaf holds.</param>
    /// <param name="evaporationError">Standard deviation of evaporation, relative.</param>
    public static InterceptionStorage Of(LeafHistory history, double capacityMm, double evaporationError)
    {
        RainCases rain = RainCases.Of(history.Series.Rain);
        HourlyDemand demand = history.Demand;
        int start = history.Hours - TrialH;
        var fog = FogDeposit.Of(history.Series);
        CanopyRun best = CanopyRun.Of(demand, rain.Best, capacityMm, fog: fog);
        double rainMm = history.MeanWhilePlucking(best.RainMm);
        double dewMm = history.MeanWhilePlucking(best.DewMm);
        double fogMm = history.MeanWhilePlucking(best.FogMm);
        double wettedMm = Total(history, CanopyRun.Of(demand, rain.Wet, capacityMm, fog: fog)) - rainMm - dewMm - fogMm;
        double slowMm = Total(history, CanopyRun.Of(demand, rain.Late, capacityMm, 1 - evaporationError, start, fog, fog.Most));
        double fastMm = Total(history, CanopyRun.Of(demand, rain.Early, capacityMm, 1 + evaporationError, start, fog, fog.Least));
        return new(best, fog, rainMm, dewMm, fogMm, wettedMm, (slowMm - fastMm) / 2);
    }

    private static double Total(LeafHistory history, CanopyRun run) =>
        history.MeanWhilePlucking(run.RainMm) + history.MeanWhilePlucking(run.DewMm) + history.MeanWhilePlucking(run.FogMm);
}
