using MathNet.Numerics.LinearAlgebra;

namespace WitherAdvisor.Recalibration.Fitting;

/// <summary>Finds the most likely point by damped Gauss–Newton steps (Levenberg 1944, Marquardt 1963).</summary>
internal sealed class PosteriorFit
{
    /// <summary>A step this small beside every standard deviation is none.</summary>
    private const double SmallStep = 0.05;

    /// <summary>From here on the bed's slopes are those of the step before: they no longer change, and they cost nine beds of ten.</summary>
    private const double NearStep = 0.3;

    /// <summary>A first look at this many occasions finds the neighbourhood of the answer at a fraction of the cost.</summary>
    private const int FirstLook = 800;

    private const int MostRetries = 10;

    private readonly FitModel model;
    private readonly RecalibrationSettings settings;
    private readonly ParallelOptions parallel;

    public PosteriorFit(FitModel model, RecalibrationSettings settings, CancellationToken cancellation)
    {
        this.model = model;
        this.settings = settings;
        parallel = new() { MaxDegreeOfParallelism = Math.Max(settings.Workers, 1), CancellationToken = cancellation };
    }

    /// <summary>Fits occasions; told of each step taken.</summary>
    public Posterior Run(IReadOnlyList<Occasion> occasions, Action<int>? stepped = null)
    {
        OccasionTerms[] all = [.. occasions.Select(occasion => new OccasionTerms(occasion))];
        var start = new double[model.Count];
        if (all.Length >= 2 * FirstLook)
        {
            int every = all.Length / FirstLook;
            start = Descend([.. all.Where((_, i) => i % every == 0)], start, null).Coordinates;
        }

        return Descend(all, start, stepped);
    }

    private Posterior Descend(OccasionTerms[] terms, double[] start, Action<int>? stepped)
    {
        var errors = new GrossErrors(settings);
        var point = new FitPoint(model, start);
        bool converged = false;
        int iteration = 0;
        bool near = false;
        NormalEquations equations = Linearised(point, terms, errors, near);
        while (!converged && iteration < settings.MostIterations)
        {
            double scaleBefore = errors.Scale;
            (FitPoint next, double largest) = Step(point, terms, errors, equations);
            point = next;
            iteration++;
            near |= largest < NearStep;
            equations = Linearised(point, terms, errors, near);
            converged = largest < SmallStep && Math.Abs(Math.Log(errors.Scale / scaleBefore)) < SmallStep;
            stepped?.Invoke(iteration);
        }

        Matrix<double> covariance = equations.Curvature.Cholesky().Solve(Matrix<double>.Build.DenseIdentity(model.Count));
        return new(model, point.Coordinates, covariance, errors.Scale, errors.Sound, iteration, converged);
    }

    private NormalEquations Linearised(FitPoint point, OccasionTerms[] terms, GrossErrors errors, bool near)
    {
        Parallel.ForEach(terms, parallel, one => one.Linearise(point, holdBedSlopes: near));
        errors.Weigh(terms);
        return NormalEquations.Of(point, terms, errors);
    }

    /// <summary>The next point, and the largest part of the step in standard deviations.</summary>
    private (FitPoint Next, double Largest) Step(
        FitPoint point, OccasionTerms[] terms, GrossErrors errors, NormalEquations equations)
    {
        double height = Height(point, errors, [.. terms.Select(one => one.Distance)]);
        double damping = 0;
        for (int retry = 0; retry < MostRetries; retry++)
        {
            Matrix<double> damped = equations.Curvature
                + Matrix<double>.Build.DenseDiagonal(model.Count, model.Count, i => damping * equations.Curvature[i, i]);
            Vector<double> step = damped.Cholesky().Solve(equations.Pull);
            double largest = Largest(step, equations.Curvature);
            var next = new FitPoint(model, [.. point.Coordinates.Select((at, i) => at + step[i])]);
            if (largest < NearStep || Height(next, errors, DistancesAt(next, terms)) < height)
            {
                return (next, largest);
            }

            damping = damping == 0 ? 0.1 : damping * 5;
        }

        return (point, 0);
    }

    private double[] DistancesAt(FitPoint point, OccasionTerms[] terms)
    {
        var distances = new double[terms.Length];
        Parallel.For(0, terms.Length, parallel, i => distances[i] = terms[i].DistanceAt(point));
        return distances;
    }

    /// <summary>Twice the negative log posterior, with the weights held.</summary>
    private double Height(FitPoint point, GrossErrors errors, double[] distances)
    {
        double sum = 0;
        for (int i = 0; i < distances.Length; i++)
        {
            sum += errors.Weights[i] / errors.Scale * distances[i];
        }

        for (int i = 0; i < model.Count; i++)
        {
            double deviations = point.Coordinates[i] / model.Spread(i);
            sum += deviations * deviations;
        }

        return sum;
    }

    private static double Largest(Vector<double> step, Matrix<double> curvature)
    {
        double largest = 0;
        for (int i = 0; i < step.Count; i++)
        {
            // The curvature's own diagonal: never wider than the true standard deviation.
            largest = Math.Max(largest, Math.Abs(step[i]) * Math.Sqrt(curvature[i, i]));
        }

        return largest;
    }
}
