namespace WitherAdvisor.Api.Pages.Curve;

/// <summary>A straight scale from a quantity to a place on the drawing.</summary>
/// <param name="Low">Quantity at <paramref name="AtLow"/>.</param>
/// <param name="High">Quantity at <paramref name="AtHigh"/>.</param>
public sealed record CurveScale(double Low, double High, double AtLow, double AtHigh)
{
    public double Place(double quantity) => AtLow + (quantity - Low) / (High - Low) * (AtHigh - AtLow);

    /// <summary>The least of some steps, in order, with which the scale has at most so many of them; else the largest.</summary>
    public double Step(IReadOnlyList<double> steps, int most)
    {
        foreach (double step in steps)
        {
            if (Math.Floor((High - Low) / step) <= most)
            {
                return step;
            }
        }

        return steps[^1];
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
