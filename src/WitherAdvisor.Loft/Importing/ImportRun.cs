using WitherAdvisor.Loft.Kept.Batches;
using WitherAdvisor.Loft.Kept.Outcomes;
using WitherAdvisor.Loft.Kept.Sites;
using WitherAdvisor.Loft.Outcomes;
using WitherAdvisor.Outcomes;

namespace WitherAdvisor.Loft.Importing;

/// <summary>One run over the lines of a log: judges each and, where it is to keep them, adds those that fit.</summary>
internal sealed class ImportRun<TLine>(
    string siteId, IReadOnlyList<StoredTrough> troughs, IReadOnlyList<TasterScale> scales, OddRows odd, bool adds)
    where TLine : ILogLine
{
    // By what a paper log knows a batch by: a log of many years is a few megabytes of these.
    private readonly Dictionary<(string Trough, DateTimeOffset LoadedAt, string Division, string Field), int> seen = [];
    private readonly HashSet<string> troughIds = [.. troughs.Select(trough => trough.Id)];

    public ImportTally<TLine> Tally { get; } = new();

    public void Over(IEnumerable<TLine> lines, IOutcomeImport kept)
    {
        foreach (TLine line in lines)
        {
            Tally.Add(Judge(line, kept));
        }
    }

    private JudgedLine<TLine> Judge(TLine line, IOutcomeImport kept)
    {
        if (line.Read is not { } read)
        {
            return new(line, RowState.Wrong, [], []);
        }

        List<LineFault> faults = [.. OfItsPlace(line, read)];
        bool fits = line.Fits && faults.Count == 0;
        KeptBatch? known = fits ? Find(line, read, kept) : null;
        faults.AddRange(known is null ? [] : AgainstKept(line, read, known));
        fits = line.Fits && faults.Count == 0;
        if (fits && known?.Outcome is not null)
        {
            return new(line, RowState.AlreadyThere, [], []);
        }

        faults.AddRange(OutcomeImpossible.In(read.Outcome.Outcome, read.Batch, scales).Select(fault => new LineFault.Impossible(fault)));
        fits = line.Fits && faults.Count == 0;
        IReadOnlyList<OutcomeOddity> oddities = fits ? Unconfirmed(read) : [];
        RowState state = !fits ? RowState.Wrong
            : oddities.Count > 0 && odd == OddRows.Ask ? RowState.Odd
            : known is null ? RowState.New : RowState.OutcomeAdded;
        if (adds && state is RowState.New or RowState.OutcomeAdded)
        {
            Add(Confirmed(read, oddities), known, kept);
        }

        return new(line, state, faults, state == RowState.Odd ? oddities : []);
    }

    private IEnumerable<LineFault> OfItsPlace(TLine line, LoggedOutcome read)
    {
        if (line.SiteId is { } given && given != siteId)
        {
            yield return new LineFault.OtherSite(given, siteId);
        }

        StoredBatch batch = read.Batch;
        if (!troughIds.Contains(batch.TroughId))
        {
            yield return new LineFault.UnknownTrough(batch.TroughId, troughIds);
        }

        var label = (batch.TroughId, batch.Batch.LoadedAt, batch.Batch.Label.Division, batch.Batch.Label.Field);
        if (!seen.TryAdd(label, line.Line))
        {
            yield return new LineFault.Twice(seen[label]);
        }
    }

    private static KeptBatch? Find(TLine line, LoggedOutcome read, IOutcomeImport kept)
    {
        StoredBatch batch = read.Batch;
        return (line.NamesItsBatch ? kept.Find(batch.Id) : null)
            ?? kept.Find(batch.TroughId, batch.Batch.LoadedAt, batch.Batch.Label.Division, batch.Batch.Label.Field);
    }

    /// <summary>What the line says otherwise than what is kept is a fault, as an import changes nothing.</summary>
    private IEnumerable<LineFault> AgainstKept(TLine line, LoggedOutcome read, KeptBatch known)
    {
        StoredBatch batch = known.Batch;
        if (batch.Ended is BatchEnd.Cancelled or BatchEnd.Mixed || batch.SiteId != siteId)
        {
            return [new LineFault.NotWitheredHere(read.Batch.TroughId, siteId, batch.Id)];
        }

        StoredBatch there = batch.IsRunning ? batch with { Ended = BatchEnd.Unloaded, UnloadedAt = read.Batch.UnloadedAt } : batch;
        return line.Differences(new(there, known.Outcome ?? read.Outcome, known.Advice), known.Outcome is not null)
            .Select(difference => new LineFault.KeptOtherwise(difference, batch.Id));
    }

    private static IReadOnlyList<OutcomeOddity> Unconfirmed(LoggedOutcome read) =>
        [.. OutcomeOddities.In(read.Outcome.Outcome, read.Batch, read.Advice).Where(oddity => !read.Outcome.Confirmed.Contains(oddity.Word))];

    private static LoggedOutcome Confirmed(LoggedOutcome read, IReadOnlyList<OutcomeOddity> oddities) => read with
    {
        Outcome = read.Outcome with { Confirmed = [.. read.Outcome.Confirmed.Concat(oddities.Select(oddity => oddity.Word)).Distinct()] },
    };

    private static void Add(LoggedOutcome read, KeptBatch? known, IOutcomeImport kept)
    {
        if (known is null)
        {
            kept.Add(read.Batch);
            if (read.Advice is { } advice)
            {
                kept.Add(advice);
            }
        }
        else if (known.Batch.IsRunning)
        {
            kept.Unload(known.Batch.Id, read.Batch.UnloadedAt);
        }

        kept.Add(read.Outcome with { BatchId = known?.Batch.Id ?? read.Batch.Id });
    }
}
