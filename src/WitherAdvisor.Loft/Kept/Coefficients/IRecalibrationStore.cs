namespace WitherAdvisor.Loft.Kept.Coefficients;

/// <summary>Recalibrations: one of a site at a time. Times come back as the same instants to the millisecond, with offset zero.</summary>
public interface IRecalibrationStore
{
    /// <summary>Queues one; its proposal gets the site's next free number. Null where one of the site waits or runs already.</summary>
    /// <exception cref="ParentNotFoundException">No such site.</exception>
    Task<StoredRecalibration?> Queue(string id, string siteId, DateTimeOffset at, CancellationToken cancel = default);

    Task<StoredRecalibration?> Find(string id, CancellationToken cancel = default);

    /// <summary>Newest first.</summary>
    Task<IReadOnlyList<StoredRecalibration>> List(string siteId, CancellationToken cancel = default);

    /// <summary>Begins the one that waits longest, and compares it with the set adopted then. Null where none waits.</summary>
    Task<StoredRecalibration?> BeginNext(DateTimeOffset at, CancellationToken cancel = default);

    /// <summary>Says how far a running one is. False where it no longer runs.</summary>
    Task<bool> Tell(string id, double share, string step, CancellationToken cancel = default);

    /// <summary>Keeps the proposal and ends the recalibration as done: both or neither. False, with nothing kept, where it no longer runs.</summary>
    Task<bool> Finish(string id, DateTimeOffset at, StoredCoefficientSet proposal, CancellationToken cancel = default);

    /// <summary>Ends one that waits or runs, otherwise than done. False where it has ended already.</summary>
    Task<bool> End(string id, DateTimeOffset at, RecalibrationStatus how, RecalibrationFailure? failure = null, CancellationToken cancel = default);

    /// <summary>Ends all that run as interrupted, for a service that starts: nothing runs yet. Answers how many there were.</summary>
    Task<int> InterruptRunning(DateTimeOffset at, CancellationToken cancel = default);
}
