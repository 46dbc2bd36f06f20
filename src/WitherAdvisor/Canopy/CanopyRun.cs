using WitherAdvisor.Evaporation;

namespace WitherAdvisor.Canopy;

/// <summary>
/// Water on the top leaf of the canopy through the hours: filled by rain, dew and fog up to what leaf holds, emptied by
/// evaporation from the wet part of it.
/// </summary>
/// <remarks>
/// A store of the kind of Rutter et al. (1971), Agric. Meteorol. 9, wet part after Deardorff (1978). Plucked
/// shoots are the top layer, so they wet first, dry first and take the dew. Rain fills what is still dry, less and less of it as
/// leaf grows wet (Merriam 1960; Aston 1979, J. Hydrol. 42), so that half a millimetre does not wet like five.
/// </remarks>
internal sealed class CanopyRun
{
    /// <summary>Share of rain that strikes the top unit of leaf area (from memory).</summary>
    public const double RainShare = 0.6;

    /// <summary>
    /// Share of the canopy's evaporation that the top layer has (from memory); of its dew too, which brings a clear
    /// calm night to the 5 to 15 % of leaf weight that practice sees.
    /// </summary>
    public const double ExchangeShare = 0.4;

    /// <summary>Most dew of an hour: radiation alone cannot drive more at −60 W/m² (derived).</summary>
    public const double MostDewMmPerH = 0.05;

    /// <summary>Most dew of a night (grassland has been measured at 0.14 ± 0.12 mm: Ritter et al. 2019).</summary>
    public const double MostDewMmPerNight = 0.3;

    /// <summary>Share of what strikes dry leaf that stays on it; the rest bounces, splashes and runs (from memory).</summary>
    public const double CaughtShare = 0.5;

    private const double LeastCapacityMm = 1e-6;

    private CanopyRun(int hours)
    {
        RainMm = new double[hours + 1];
        DewMm = new double[hours + 1];
        FogMm = new double[hours + 1];
    }

    /// <summary>Water from rain on the leaf at each instant, mm per one-sided leaf area.</summary>
    public double[] RainMm { get; }

    /// <summary>Water from dew on the leaf at each instant, mm per one-sided leaf area.</summary>
    public double[] DewMm { get; }

    /// <summary>Water from fog and drizzle on the leaf at each instant, mm per one-sided leaf area.</summary>
    public double[] FogMm { get; }

    /// <summary>Runs the store, dry at the start.</summary>
    /// <param name="demand">Of the air.</param>
    /// <param name="rainMm">By the hour.</param>
    /// <param name="capacityMm">C_max.</param>
    /// <param name="dryingFactor">1, or another to try what an error in evaporation does.</param>
    /// <param name="fromInstant">Where to start.</param>
    /// <param name="fog">What fog and drizzle lay; null for none.</param>
    /// <param name="laidMm">By the hour, where it is tried as another amount than the fog's own.</param>
    public static CanopyRun Of(
        HourlyDemand demand, double[] rainMm, double capacityMm, double dryingFactor = 1, int fromInstant = 0, FogDeposit? fog = null, double[]? laidMm = null)
    {
        var run = new CanopyRun(rainMm.Length - 1);
        double capacity = Math.Max(capacityMm, LeastCapacityMm);
        double rain = 0;
        double dew = 0;
        double fogged = 0;
        double dewOfNight = 0;
        for (int hour = fromInstant + 1; hour < rainMm.Length; hour++)
        {
            double demandMm = demand.WetLeafMm[hour];
            dewOfNight = demand.IsDay[hour] ? 0 : dewOfNight;
            double laid = (laidMm ?? fog?.Mm)?[hour] ?? 0;
            double lacking = laid;
            if (demandMm >= 0)
            {
                bool staysWet = fog is not null && fog.KeepsWet[hour] && laid > 0;
                double left = staysWet ? 1 : ShareLeft((rain + dew + fogged) / capacity, ExchangeShare * dryingFactor * demandMm / capacity);
                rain *= left;
                dew *= left;
                fogged *= left;
            }
            else
            {
                double condensed = Math.Min(-ExchangeShare * demandMm, MostDewMmPerH);
                condensed = Math.Max(Math.Min(condensed, Math.Min(MostDewMmPerNight - dewOfNight, capacity - rain - dew - fogged)), 0);
                dewOfNight += condensed;

                // What settles on leaf at night is told twice, by radiation and by saturated air.
                lacking = Math.Max(laid - condensed, 0);
                dew += condensed;
            }

            // Rain comes last, so that leaf at the end of an hour of rain is wet; what it cannot hold drips off.
            fogged += Math.Max(Math.Min(lacking, capacity - rain - dew - fogged), 0);
            rain += Math.Max(capacity - rain - dew - fogged, 0) * (1 - Math.Exp(-CaughtShare * RainShare * rainMm[hour] / capacity));
            run.RainMm[hour] = rain;
            run.DewMm[hour] = dew;
            run.FogMm[hour] = fogged;
        }

        return run;
    }

    /// <summary>
    /// Share left of a store filled to x after an hour of dx/dt = −k x^(2/3). Solved exactly: the store can empty in
    /// less than the hour, where a step forward would overshoot and a step backward would leave a tail.
    /// </summary>
    private static double ShareLeft(double filled, double ratePerHour)
    {
        if (filled <= 0)
        {
            return 1;
        }

        double root = Math.Cbrt(filled);
        double leftRoot = Math.Max(root - ratePerHour / 3, 0) / root;
        return leftRoot * leftRoot * leftRoot;
    }
}
