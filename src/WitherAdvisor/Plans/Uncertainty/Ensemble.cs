using WitherAdvisor.Numerics;

namespace WitherAdvisor.Plans.Uncertainty;

/// <summary>The chosen plan run over what is uncertain: leaf, coefficients, airflow, the air as set.</summary>
internal sealed class Ensemble
{
    public const int Members = NormalLattice.Count;

    private readonly List<EnsembleMember> members = [];

    private readonly double startHour;

    private Ensemble(double startHour) => this.startHour = startHour;

    public IReadOnlyList<EnsembleMember> All => members;

    public static Ensemble Run(UncertainWither wither, double stopHour)
    {
        var ensemble = new Ensemble(wither.StartHour);
        foreach (double[] point in NormalLattice.Draws())
        {
            ensemble.members.Add(wither.Dry(UncertainDraw.FromLattice(point), stopHour));
        }

        return ensemble;
    }

    /// <summary>Hours to ready; a member that never gets there lies beyond all that do.</summary>
    public Percentiles ReadyHours()
    {
        double?[] hours = [.. members.Select(member => member.ReadyHour)];
        if (hours.Any(hour => hour is null || hour <= startHour))
        {
            return ByOrder(hours);
        }

        // Rates multiply, so hours still to go are nearer to normal in their logarithm.
        var logarithms = new SmoothQuantiles([.. hours.Select(hour => Math.Log(hour!.Value - startHour))]);
        double At(double share) => startHour + Math.Exp(logarithms.At(share));
        return new(At(0.1), At(0.5), At(0.9));
    }

    public Percentiles FinalMoistureWetBasis()
    {
        var moisture = new SmoothQuantiles([.. members.Select(member => member.FinalMoistureWetBasis)]);
        return new(moisture.At(0.1), moisture.At(0.5), moisture.At(0.9));
    }

    /// <summary>Weights of all leaf per area at an hour, kg/m², lightest first, beside the members that have them.</summary>
    public IReadOnlyList<(double WeightKgPerM2, EnsembleMember Member)> ByWeight(double hour) =>
        [.. members.Select(member => (member.WeightKgPerM2(hour), member)).OrderBy(pair => pair.Item1)];

    private static Percentiles ByOrder(IEnumerable<double?> values)
    {
        double[] sorted = [.. values.Select(value => value ?? double.PositiveInfinity).Order()];
        return new(At(sorted, 0.1), At(sorted, 0.5), At(sorted, 0.9));
    }

    private static double? At(double[] sorted, double share)
    {
        double place = share * (sorted.Length - 1);
        int below = (int)place;
        int above = Math.Min(below + 1, sorted.Length - 1);
        return double.IsInfinity(sorted[above]) ? null : sorted[below] + (place - below) * (sorted[above] - sorted[below]);
    }
}
