namespace WitherAdvisor.Plans;

/// <summary>When a trial turns its leaf. Hours count from loading.</summary>
internal abstract record TurnRule
{
    private TurnRule()
    {
    }

    /// <summary>Nobody turns.</summary>
    public static TurnRule None { get; } = new AtHours([]);

    /// <summary>Every so many hours from one hour, loading else, to another.</summary>
    public static TurnRule Every(double hours, double toHour, double fromHour = 0) =>
        new AtHours([.. Enumerable.Range(1, Math.Max((int)((toHour - fromHour) / hours), 0)).Select(turn => fromHour + turn * hours)]);

    /// <summary>At given hours, in order.</summary>
    public sealed record AtHours(IReadOnlyList<double> Hours) : TurnRule;

    /// <summary>When the layers have parted this far.</summary>
    /// <param name="SpreadWetBasis">Spread of tissue moisture at which a turn is called for, wet basis.</param>
    /// <param name="FirstHour">No turn before.</param>
    /// <param name="LastHour">No turn after.</param>
    /// <param name="LeastGapHours">Hours between two turns, at least.</param>
    /// <param name="Most">Turns, at most.</param>
    public sealed record WhenUneven(double SpreadWetBasis, double FirstHour, double LastHour, double LeastGapHours, int Most) : TurnRule;
}
