using WitherAdvisor.Loft.Kept.Outcomes;

namespace WitherAdvisor.Loft.Importing;

/// <summary>A line of a log as an adapter read it.</summary>
public interface ILogLine
{
    /// <summary>What it tells; null where it could not be read.</summary>
    LoggedOutcome? Read { get; }

    /// <summary>Whether nothing is wrong with it by itself.</summary>
    bool Fits { get; }

    /// <summary>The site that it names; null where it names none.</summary>
    string? SiteId { get; }

    /// <summary>Whether it names its batch by id.</summary>
    bool NamesItsBatch { get; }

    /// <summary>Where in its file it stands.</summary>
    int Line { get; }

    /// <summary>What it says otherwise than what is kept; what it says nothing of is no difference.</summary>
    /// <param name="hasOutcome">Whether an outcome is kept too, and not only a batch.</param>
    IReadOnlyList<ColumnDifference> Differences(LoggedOutcome kept, bool hasOutcome);
}
