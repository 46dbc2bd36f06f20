namespace WitherAdvisor.Readings.Hourly;

/// <summary>Puts values that hold at an instant onto the hours.</summary>
internal static class InstantValues
{
    /// <summary>Longest gap to draw a straight line across, hours.</summary>
    public const double LongestGapH = 3;

    /// <summary>A reading alone counts for instants this near, hours: a report of 00:53 is the report of 01:00.</summary>
    public const double NearH = 0.5;

    private const double RoundingH = 1e-6;

    /// <summary>Values at instants 0 to the grid's last, not a number where no reading is near enough.</summary>
    public static double[] OnHours(ReadOnlySpan<double> position, ReadOnlySpan<double> values, int hours)
    {
        var onHours = new double[hours + 1];
        Array.Fill(onHours, double.NaN);
        int previous = -1;
        for (int at = 0; at < values.Length; at++)
        {
            if (double.IsNaN(values[at]))
            {
                continue;
            }

            if (previous >= 0 && position[at] - position[previous] <= LongestGapH + RoundingH)
            {
                DrawLine(onHours, position[previous], values[previous], position[at], values[at]);
            }

            Hold(onHours, position[at], values[at]);
            previous = at;
        }

        return onHours;
    }

    /// <summary>
    /// The value at any position, not a number where no reading is near enough: of the readings themselves, so that what was
    /// read at twenty past holds at twenty past, whatever the whole hours beside it say.
    /// </summary>
    public static double At(ReadOnlySpan<double> position, ReadOnlySpan<double> values, double wanted)
    {
        int found = position.BinarySearch(wanted);
        int above = found < 0 ? ~found : found;
        int below = found < 0 ? above - 1 : found;
        while (above < values.Length && double.IsNaN(values[above]))
        {
            above++;
        }

        while (below >= 0 && double.IsNaN(values[below]))
        {
            below--;
        }

        double sinceH = below < 0 ? double.PositiveInfinity : wanted - position[below];
        double untilH = above < values.Length ? position[above] - wanted : double.PositiveInfinity;
        return sinceH == 0 ? values[below]
            : sinceH + untilH <= LongestGapH + RoundingH ? values[below] + (values[above] - values[below]) * sinceH / (sinceH + untilH)
            : sinceH <= NearH ? values[below]
            : untilH <= NearH ? values[above]
            : double.NaN;
    }

    /// <summary>Instants with a value read near enough to count as theirs; others are drawn or unknown.</summary>
    public static bool[] ObservedNear(ReadOnlySpan<double> position, ReadOnlySpan<double> values, int hours)
    {
        var near = new bool[hours + 1];
        for (int at = 0; at < values.Length; at++)
        {
            // Halfway between two instants it is near to both.
            int first = (int)Math.Ceiling(position[at] - NearH);
            int last = (int)Math.Floor(position[at] + NearH);
            for (int hour = Math.Max(first, 0); hour <= Math.Min(last, hours) && !double.IsNaN(values[at]); hour++)
            {
                near[hour] = true;
            }
        }

        return near;
    }

    private static void DrawLine(double[] onHours, double from, double atFrom, double to, double atTo)
    {
        int last = Math.Min((int)Math.Floor(to), onHours.Length - 1);
        for (int hour = Math.Max((int)Math.Ceiling(from), 0); hour <= last; hour++)
        {
            onHours[hour] = atFrom + (atTo - atFrom) * (hour - from) / (to - from);
        }
    }

    private static void Hold(double[] onHours, double position, double value)
    {
        int below = (int)Math.Floor(position);
        HoldAt(onHours, below, position - below, value);
        HoldAt(onHours, below + 1, below + 1 - position, value);
    }

    private static void HoldAt(double[] onHours, int hour, double distanceH, double value)
    {
        if (distanceH <= NearH && hour >= 0 && hour < onHours.Length && double.IsNaN(onHours[hour]))
        {
            onHours[hour] = value;
        }
    }
}
