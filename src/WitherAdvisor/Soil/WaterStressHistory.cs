using WitherAdvisor.Evaporation;
using WitherAdvisor.Readings.Hourly;

namespace WitherAdvisor.Soil;

/// <summary>
/// K_s of tea at the end of each day of a history. The soil's start is not known, so the balance runs from a wet, a
/// middle and a dry one; nor is what the air asked, so each runs with less, as much and more. Their spread is the error: that of
/// the start shrinks as days pass, that of the demand does not.
/// </summary>
internal sealed class WaterStressHistory
{
    private const int HoursInDay = 24;

    /// <summary>Rain of an hour of which nothing is known, before any hour is: 3.6 mm a day (from memory, tea districts).</summary>
    public const double UsualRainMmPerH = 0.15;

    /// <summary>Known hours that weigh as much as that guess.</summary>
    private const double GuessWeighsH = 168;

    /// <summary>Of the equation, and of the soil where it is dry: its depth of roots is anything from 0.9 to 1.5 m (from memory).</summary>
    private const double LeastError = 0.03;
    private const double DrySoilError = 0.10;

    /// <summary>Weights of the three starts: a distribution of mean 0.82 and standard deviation 0.30 for K_s.</summary>
    private static readonly double[] Weights = [0.25, 0.5, 0.25];

    /// <summary>Demand in standard deviations from the best, and the weight of each: exact for what is a polynomial of it up to the fifth power (Gauss and Hermite).</summary>
    private static readonly double[] DemandAt = [-Math.Sqrt(3), 0, Math.Sqrt(3)];
    private static readonly double[] DemandWeights = [1 / 6.0, 2 / 3.0, 1 / 6.0];

    private WaterStressHistory(int days)
    {
        Mean = new double[days];
        Error = new double[days];
        DepletionMm = new double[days];
    }

    /// <summary>K_s at the end of each day, 0 to 1.</summary>
    public double[] Mean { get; }

    /// <summary>Standard deviation of each day's K_s.</summary>
    public double[] Error { get; }

    /// <summary>D_r at the end of each day, mm: the mean over the starts.</summary>
    public double[] DepletionMm { get; }

    /// <summary>K_s at the end of the last day.</summary>
    public double LastMean => Mean[^1];

    /// <summary>Standard deviation of the last day's K_s.</summary>
    public double LastError => Error[^1];

    /// <summary>Runs the balance day by day from its three starts.</summary>
    /// <param name="evaporationError">Standard deviation of evapotranspiration, relative.</param>
    public static WaterStressHistory Of(HourlyDemand demand, HourlyRain rain, RootZone soil, double evaporationError)
    {
        int days = (demand.ReferenceMm.Length - 1) / HoursInDay;
        var history = new WaterStressHistory(days);
        double usualRain = UsualRain(rain);
        double[] depletion = [.. DemandAt.SelectMany(_ => Starts(soil))];
        Span<double> stress = stackalloc double[depletion.Length];
        for (int day = 0; day < days; day++)
        {
            SumDay(demand, rain, day * HoursInDay, out double rainMm, out double unknownH, out double referenceMm);
            for (int one = 0; one < depletion.Length; one++)
            {
                // Wet, middle, dry: twice, once, none of the usual rain in unknown hours.
                double fallenMm = rainMm + (2 - one % Weights.Length) * usualRain * unknownH;
                double demandMm = Math.Max(referenceMm * (1 + DemandAt[one / Weights.Length] * evaporationError), 0);
                depletion[one] = soil.Day(depletion[one], fallenMm, demandMm).DepletionMm;
                stress[one] = soil.Stress(depletion[one], soil.CropCoefficient * demandMm);
            }

            history.Set(day, stress, depletion);
        }

        return history;
    }

    private void Set(int day, ReadOnlySpan<double> stress, ReadOnlySpan<double> depletion)
    {
        double mean = 0;
        double square = 0;
        for (int one = 0; one < stress.Length; one++)
        {
            mean += Weight(one) * stress[one];
            DepletionMm[day] += Weight(one) * depletion[one];
        }

        for (int one = 0; one < stress.Length; one++)
        {
            square += Weight(one) * (stress[one] - mean) * (stress[one] - mean);
        }

        Mean[day] = mean;
        double dry = DrySoilError * (1 - mean);
        Error[day] = Math.Sqrt(square + LeastError * LeastError + dry * dry);
    }

    private static double Weight(int one) => Weights[one % Weights.Length] * DemandWeights[one / Weights.Length];

    /// <summary>At field capacity, at the edge of stress, and where K_s is 0.3.</summary>
    private static double[] Starts(RootZone soil)
    {
        double atEdge = soil.DepletionFraction * soil.TotalAvailableMm;
        return [0, atEdge, soil.TotalAvailableMm - 0.3 * (soil.TotalAvailableMm - atEdge)];
    }

    private static double UsualRain(HourlyRain rain)
    {
        double fallenMm = UsualRainMmPerH * GuessWeighsH;
        double knownH = GuessWeighsH;
        for (int hour = 1; hour < rain.Known.Length; hour++)
        {
            fallenMm += rain.ObservedMm[hour] + rain.StatedMm[hour];
            knownH += rain.Known[hour];
        }

        return fallenMm / knownH;
    }

    private static void SumDay(
        HourlyDemand demand, HourlyRain rain, int before, out double rainMm, out double unknownH, out double referenceMm)
    {
        rainMm = unknownH = referenceMm = 0;
        for (int hour = before + 1; hour <= before + HoursInDay; hour++)
        {
            rainMm += rain.ObservedMm[hour] + rain.StatedMm[hour];
            unknownH += 1 - rain.Known[hour];
            referenceMm += demand.ReferenceMm[hour];
        }
    }
}
