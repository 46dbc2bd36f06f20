namespace WitherAdvisor.Screening;

/// <summary>The first harmonic of a day: how far a value swings about its mean, and when it is highest.</summary>
internal readonly record struct Harmonic(double Cosine, double Sine)
{
    private const double HoursInDay = 24;

    public double Swing => Math.Sqrt(Cosine * Cosine + Sine * Sine);

    /// <summary>Hour at which it is highest, 0 to 24.</summary>
    public double PeakH => (Math.Atan2(Sine, Cosine) / Math.PI * HoursInDay / 2 + HoursInDay) % HoursInDay;

    /// <summary>Of values by the hour of the day, spread over all of it.</summary>
    public static Harmonic Of(IEnumerable<(double Hour, double Value)> values)
    {
        List<(double Hour, double Value)> all = [.. values];
        double mean = all.Average(one => one.Value);
        return new(
            2 * all.Average(one => (one.Value - mean) * Math.Cos(Angle(one.Hour))),
            2 * all.Average(one => (one.Value - mean) * Math.Sin(Angle(one.Hour))));
    }

    /// <summary>Of several days together: those that swing against each other leave little.</summary>
    public static Harmonic Mean(IReadOnlyList<Harmonic> days) => days.Count == 0
        ? default
        : new(days.Average(day => day.Cosine), days.Average(day => day.Sine));

    private static double Angle(double hour) => hour / HoursInDay * 2 * Math.PI;
}
