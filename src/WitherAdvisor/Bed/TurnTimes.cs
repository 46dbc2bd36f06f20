namespace WitherAdvisor.Bed;

/// <summary>When a bed is turned, hours from loading: at given hours, or over and over.</summary>
internal sealed class TurnTimes
{
    private readonly IReadOnlyList<double> hours;
    private readonly double everyHours;
    private int turned;

    private TurnTimes(IReadOnlyList<double> hours, double everyHours, double first) => (this.hours, this.everyHours, NextHour) = (hours, everyHours, first);

    /// <summary>The next turn; infinite where there is none.</summary>
    public double NextHour { get; private set; }

    public static TurnTimes At(IReadOnlyList<double> hoursInOrder) =>
        new(hoursInOrder, 0, hoursInOrder.Count > 0 ? hoursInOrder[0] : double.PositiveInfinity);

    public static TurnTimes Every(double hours, double firstHour) => new([], hours, firstHour);

    /// <summary>Goes on to the turn after.</summary>
    public void Done()
    {
        turned++;
        NextHour = everyHours > 0 ? NextHour + everyHours
            : turned < hours.Count ? hours[turned]
            : double.PositiveInfinity;
    }
}
