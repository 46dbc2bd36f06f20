namespace WitherAdvisor.Api.Pages.Curve;

/// <summary>Keeps labels at the ends of lines from standing on one another.</summary>
public static class CurveLabels
{
    /// <summary>
    /// Places for labels that want to stand at <paramref name="wanted"/>, in the same order, at least
    /// <paramref name="height"/> apart and within the bounds.
    /// </summary>
    public static IReadOnlyList<double> Spread(IReadOnlyList<double> wanted, double height, double top, double bottom)
    {
        double[] places = new double[wanted.Count];
        int[] order = [.. Enumerable.Range(0, wanted.Count).OrderBy(i => wanted[i])];
        double next = top;
        foreach (int i in order)
        {
            places[i] = Math.Max(wanted[i], next);
            next = places[i] + height;
        }

        double last = bottom;
        foreach (int i in order.Reverse())
        {
            places[i] = Math.Min(places[i], last);
            last = places[i] - height;
        }

        return places;
    }
}
