namespace WitherAdvisor.Api.Pages.Curve;

/// <summary>A straight scale from a quantity to a place on the drawing.</summary>
/// <param name="Low">Quantity at <paramref name="AtLow"/>.</param>
/// <param name="High">Quantity at <paramref name="AtHigh"/>.</param>
public sealed record CurveScale(double Low, double High, double AtLow, double AtHigh)
{
    public double Place(double quantity) => AtLow + (quantity - Low) / (High - Low) * (AtHigh - AtLow);

    /// <summary>The least of 1, 2, 5, 10, … times <paramref name="unit"/> that gives at most so many steps.</summary>
    public double Step(double unit, int mostSteps)
    {
        double[] steps = [1, 2, 5, 10, 20, 50, 100];
        return unit * steps.First(step => step == 100 || (High - Low) / (unit * step) <= mostSteps);
    }

    /// <summary>Multiples of a step within the scale.</summary>
    public IEnumerable<double> Marks(double step)
    {
        const double Rounding = 1e-9;
        for (double mark = Math.Ceiling(Low / step - Rounding) * step; mark <= High + step * Rounding; mark += step)
        {
            yield return mark;
        }
    }
}
