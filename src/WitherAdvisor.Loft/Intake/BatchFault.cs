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

    /// <summary>More leaf than the trough takes, of all lots where it comes in lots.</summary>
    public sealed record TooMuchLeaf(double GivenKg, double MostKg, double AreaM2, double MostKgPerM2, bool InLots) : BatchFault;

    /// <summary>A lot that the trough does not take beside the leaf that lies there.</summary>
    public sealed record TooMuchWithLot(double GivenKg, double LyingKg, double MostKg) : BatchFault;

    /// <summary>A lot so far from the others in time that it is no part of the same wither.</summary>
    public sealed record LotTooFarApart(DateTimeOffset LoadedAt, DateTimeOffset Other, double MostHours) : BatchFault;
}
