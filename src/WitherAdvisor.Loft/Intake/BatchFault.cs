namespace WitherAdvisor.Loft.Intake;

/// <summary>What cannot be of a batch.</summary>
public abstract record BatchFault
{
    private BatchFault()
    {
    }

    public sealed record PluckingEndsBeforeItBegins(DateTimeOffset From, DateTimeOffset To) : BatchFault;

    public sealed record LoadedBeforePlucked(DateTimeOffset PluckedTo, DateTimeOffset LoadedAt) : BatchFault;

    public sealed record PluckedTooLongAgo(DateTimeOffset PluckedFrom, DateTimeOffset LoadedAt, double MostHours) : BatchFault;

    public sealed record WantedAtAnImpossibleTime(DateTimeOffset LoadedAt, DateTimeOffset ReadyBy, double MostHours) : BatchFault;

    /// <summary>More leaf than the trough takes.</summary>
    public sealed record TooMuchLeaf(double GivenKg, double MostKg, double AreaM2, double MostKgPerM2) : BatchFault;
}
