namespace WitherAdvisor.Loft.Importing;

/// <summary>What came of importing a log.</summary>
public abstract record ImportResult<TLine>
    where TLine : ILogLine
{
    private ImportResult()
    {
    }

    /// <summary>Nothing was to be kept.</summary>
    public sealed record Previewed(ImportTally<TLine> Tally) : ImportResult<TLine>;

    /// <summary>All that fits is kept.</summary>
    public sealed record Taken(ImportTally<TLine> Tally) : ImportResult<TLine>;

    /// <summary>Some lines do not fit, so none was kept.</summary>
    public sealed record NothingKept(ImportTally<TLine> Tally) : ImportResult<TLine>;
}
