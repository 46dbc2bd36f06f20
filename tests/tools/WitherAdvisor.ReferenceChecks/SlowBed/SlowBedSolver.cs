using MathNet.Numerics.LinearAlgebra;
using MathNet.Numerics.OdeSolvers;
using WitherAdvisor.ReferenceChecks.SlowAir;

namespace WitherAdvisor.ReferenceChecks.SlowBed;

/// <summary>
/// The equations of the bed solved a second time and plainly: leaf at many heights, the air's two equations marched
/// through them by Runge–Kutta of fourth order, and the leaf's by the same method of MathNet.Numerics in time. It shares
/// no code with the library; nothing in it is tuned to be quick.
/// </summary>
public sealed class SlowBedSolver(BedWither wither, SlowGrid grid)
{
    private const double SecondsPerHour = 3600;

    private readonly AirMarch march = new(wither, grid.Nodes);

    public static BedCourse Solve(BedWither wither, SlowGrid grid) => new SlowBedSolver(wither, grid).Solve();

    private BedCourse Solve()
    {
        Vector<double> water = AtLoading();
        double? reached = null;
        var byHour = new List<double> { WetBasis(Mean(water)) };
        for (int hour = 0; hour < BedWither.HorizonHours && reached is null; hour++)
        {
            if (hour > 0 && hour % wither.TurnEveryHours == 0)
            {
                water = Turned(water);
            }

            Vector<double>[] course = RungeKutta.FourthOrder(
                water, 0, SecondsPerHour, grid.StepsPerHour + 1, (_, state) => march.RatesPerSecond(state));
            reached = hour + Crossing(course);
            water = course[^1];
            byHour.Add(WetBasis(Mean(water)));
        }

        return new(reached, byHour);
    }

    private Vector<double> AtLoading()
    {
        double m = wither.Leaf.TissueMoistureWetBasis;
        double tissue = m / (1 - m);
        double surface = wither.Leaf.SurfaceWaterKgPerKg / (1 - m);
        return Vector<double>.Build.Dense(2 * grid.Nodes, i => i < grid.Nodes ? tissue : surface);
    }

    /// <summary>Hours into a course at which its mean comes down to the target; null where it does not.</summary>
    private double? Crossing(Vector<double>[] course)
    {
        double before = Mean(course[0]);
        if (before <= wither.TargetDryBasis)
        {
            return 0;
        }

        for (int i = 1; i < course.Length; i++)
        {
            double after = Mean(course[i]);
            if (after <= wither.TargetDryBasis)
            {
                return (i - 1 + (before - wither.TargetDryBasis) / (before - after)) / grid.StepsPerHour;
            }

            before = after;
        }

        return null;
    }

    /// <summary>The profile reversed and blended toward its mean, tissue and surface each by itself.</summary>
    private Vector<double> Turned(Vector<double> water)
    {
        double blend = wither.Coefficients.TurnBlend;
        double[] means = [MeanOf(water, 0), MeanOf(water, grid.Nodes)];
        return Vector<double>.Build.Dense(2 * grid.Nodes, i =>
        {
            int part = i / grid.Nodes;
            int mirrored = (2 * part + 1) * grid.Nodes - 1 - i;
            return (1 - blend) * water[mirrored] + blend * means[part];
        });
    }

    private double Mean(Vector<double> water) => MeanOf(water, 0) + MeanOf(water, grid.Nodes);

    /// <summary>Simpson's rule over the height; water on the leaf is never less than none.</summary>
    private double MeanOf(Vector<double> water, int first)
    {
        double sum = 0;
        for (int i = 0; i < grid.Nodes; i++)
        {
            int weight = i == 0 || i == grid.Nodes - 1 ? 1 : i % 2 == 1 ? 4 : 2;
            sum += weight * Math.Max(water[first + i], 0);
        }

        return sum / (3 * (grid.Nodes - 1));
    }

    private static double WetBasis(double dryBasis) => dryBasis / (1 + dryBasis);
}
