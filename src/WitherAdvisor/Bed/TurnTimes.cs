namespace WitherAdvisor.Bed;

/// <summary>When a bed is turned: at given hours from loading, or when whoever watches it calls for a turn.</summary>
internal sealed class TurnTimes
{
    private readonly IReadOnlyList<double> hours;
    private int turned;

    private TurnTimes(IReadOnlyList<double> hours) =>
        (this.hours, NextHour) = (hours, hours.Count > 0 ? hours[0] : double.PositiveInfinity);

    /// <summary>The next turn; infinite where there is none.</summary>
    public double NextHour { get; private set; }

    public static TurnTimes At(IReadOnlyList<double> hoursInOrder) => new(hoursInOrder);

    /// <summary>None but those that are called for.</summary>
    public static TurnTimes WhenCalled() => new([]);

    /// <summary>Calls for a turn at an hour.</summary>
    public void Call(double hour) => NextHour = hour;

    /// <summary>Goes on to the turn after.</summary>
    public void Done()
    {
        turned++;
        NextHour = turned < hours.Count ? hours[turned] : double.PositiveInfinity;
    }
}
