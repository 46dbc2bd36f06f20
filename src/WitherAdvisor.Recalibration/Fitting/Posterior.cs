using MathNet.Numerics.LinearAlgebra;

namespace WitherAdvisor.Recalibration.Fitting;

/// <summary>What a fit came to: the most likely point, and the normal distribution about it.</summary>
/// <param name="Model">What was fitted.</param>
/// <param name="Coordinates">The point.</param>
/// <param name="Covariance">About it, in the coordinates.</param>
/// <param name="Scale">Variance of residuals over the stated.</param>
/// <param name="Sound">Chance of each occasion to be as stated.</param>
/// <param name="Iterations">Steps taken.</param>
/// <param name="Converged">Whether the last step was small beside the standard deviations.</param>
internal sealed record Posterior(
    FitModel Model,
    double[] Coordinates,
    Matrix<double> Covariance,
    double Scale,
    double[] Sound,
    int Iterations,
    bool Converged)
{
    /// <summary>Before any outcome.</summary>
    public static Posterior OfPrior(FitModel model, int occasions) => new(
        model,
        new double[model.Count],
        Matrix<double>.Build.DenseDiagonal(model.Count, model.Count, i => model.Spread(i) * model.Spread(i)),
        1,
        [.. Enumerable.Repeat(1.0, occasions)],
        0,
        true);

    public FitPoint Point => new(Model, Coordinates);
}
