using WitherAdvisor.Api.Http;
using WitherAdvisor.Api.Input;
using WitherAdvisor.Api.Outcomes.Log;
using WitherAdvisor.Api.Sites;
using WitherAdvisor.Outcomes;
using WitherAdvisor.Store;
using WitherAdvisor.Words;
using WitherAdvisor.Words.Leaf;
using WitherAdvisor.Words.Units;

namespace WitherAdvisor.Api.Outcomes.Import;

/// <summary>One run over the rows of a log: judges each and, where it is to keep them, adds those that fit.</summary>
internal sealed class ImportRun(
    StoredSite site, IReadOnlyList<StoredTrough> troughs, IReadOnlyList<TasterScale> scales, OddRows odd, bool adds, DateTimeOffset now)
{
    private readonly WallClock clock = new(site.TimeZone);
    private readonly LogWriting writing = new(new SiteClock(site.TimeZone));
    private readonly LogReading reading = new(site.Id, now);

    // By what a paper log knows a batch by: a log of many years is a few megabytes of these.
    private readonly Dictionary<(string Trough, DateTimeOffset LoadedAt, string Division, string Field), int> lines = [];
    private readonly HashSet<string> troughIds = [.. troughs.Select(trough => trough.Id)];

    public ImportTally Tally { get; } = new();

    public void Over(LogFile file, string[] header, IOutcomeImport kept)
    {
        LogCells cells = new(header, clock);
        foreach ((int line, string[] row) in file.Rows())
        {
            Tally.Add(Judge(cells, line, row, kept));
        }
    }

    private ImportRowAnswer Judge(LogCells cells, int line, string[] row, IOutcomeImport kept)
    {
        List<FieldError> errors = [];
        LoggedOutcome? read = cells.Read(row, errors) is { } logRow ? Read(logRow, line, errors) : null;
        if (read is null)
        {
            return Answer(line, RowState.Wrong, null, errors, []);
        }

        KeptBatch? known = errors.Count > 0 ? null : Find(read, row, cells, kept, errors);
        if (known?.Outcome is not null && errors.Count == 0)
        {
            return Answer(line, RowState.AlreadyThere, read, [], []);
        }

        errors.AddRange(OutcomeImpossible.In(read.Outcome.Outcome, read.Batch, scales));
        IReadOnlyList<ProblemWarning> warnings = errors.Count > 0 ? [] : Unconfirmed(read);
        RowState state = errors.Count > 0 ? RowState.Wrong
            : warnings.Count > 0 && odd == OddRows.Ask ? RowState.Odd
            : known is null ? RowState.New : RowState.OutcomeAdded;
        if (adds && state is RowState.New or RowState.OutcomeAdded)
        {
            Add(Confirmed(read, warnings), known, kept);
        }

        return Answer(line, state, read, errors, state == RowState.Odd ? warnings : []);
    }

    private LoggedOutcome Read(LogRow row, int line, List<FieldError> errors)
    {
        LoggedOutcome read = reading.Read(row, errors);
        if (row.Site is { } given && given != site.Id)
        {
            errors.Add(FieldError.Of("site", given, $"{site.Id}, which the log is imported for"));
        }

        if (!troughIds.Contains(row.Trough))
        {
            errors.Add(FieldError.Of("trough", row.Trough, "one of the site's troughs: " + string.Join(", ", troughIds)));
        }

        var label = (row.Trough, read.Batch.Batch.LoadedAt, row.Division, row.Field);
        if (!lines.TryAdd(label, line))
        {
            errors.Add(FieldError.Of("loaded_at", Rfc3339.Format(row.LoadedAt), $"each batch once; line {lines[label]} has it too"));
        }

        return read;
    }

    /// <summary>The batch as it is kept already; what of the row is otherwise there is an error, as an import changes nothing.</summary>
    private KeptBatch? Find(LoggedOutcome read, string[] row, LogCells cells, IOutcomeImport kept, List<FieldError> errors)
    {
        StoredBatch batch = read.Batch;
        LogColumn[] given = [.. cells.Given(row)];
        bool hasId = given.Any(column => column.Name == "batch_id");
        KeptBatch? known = (hasId ? kept.Find(batch.Id) : null)
            ?? kept.Find(batch.TroughId, batch.Batch.LoadedAt, batch.Batch.Label.Division, batch.Batch.Label.Field);
        if (known is null)
        {
            return null;
        }

        if (known.Batch.Ended is BatchEnd.Cancelled or BatchEnd.Mixed || known.Batch.SiteId != site.Id)
        {
            errors.Add(FieldError.Of("trough", batch.TroughId, $"a batch that was withered at {site.Id}; {known.Batch.Id} was not"));
            return known;
        }

        errors.AddRange(Differences(read, known, given));
        return known;
    }

    private IEnumerable<FieldError> Differences(LoggedOutcome read, KeptBatch known, LogColumn[] given)
    {
        bool hasOutcome = known.Outcome is not null;
        StoredBatch there = known.Batch.IsRunning ? known.Batch with { Ended = BatchEnd.Unloaded, UnloadedAt = read.Batch.UnloadedAt } : known.Batch;
        LogRow kept = writing.Row(new(there, known.Outcome ?? read.Outcome, known.Advice));
        LogRow said = writing.Row(read);
        return given
            .Where(column => !column.Meaning.Follows && (hasOutcome || column.Meaning.Part == LogPart.Batch || column.Name == "unloaded_at"))
            .Where(column => LogCell.Write(column, kept) != LogCell.Write(column, said))
            .Select(column => FieldError.Of(
                column.Name, LogCell.Write(column, said), $"{(LogCell.Write(column, kept) is { Length: > 0 } cell ? cell : "nothing")}, as kept for batch {there.Id}; an import changes nothing"));
    }

    private static IReadOnlyList<ProblemWarning> Unconfirmed(LoggedOutcome read) =>
        [.. OutcomeOddities.In(read.Outcome.Outcome, read.Batch, read.Advice).Where(warning => !read.Outcome.Confirmed.Contains(warning.Code))];

    private static LoggedOutcome Confirmed(LoggedOutcome read, IReadOnlyList<ProblemWarning> warnings) => read with
    {
        Outcome = read.Outcome with { Confirmed = [.. read.Outcome.Confirmed.Concat(warnings.Select(warning => warning.Code)).Distinct()] },
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

    private ImportRowAnswer Answer(
        int line, RowState state, LoggedOutcome? read, IReadOnlyList<FieldError> errors, IReadOnlyList<ProblemWarning> warnings) => new()
        {
            Line = line,
            State = state,
            Batch = read is null ? null : $"{read.Batch.TroughId}, {clock.DateAndClock(read.Batch.Batch.LoadedAt)}, {LeafWording.Label(Wordbook.English, read.Batch.Batch.Label)}",
            Errors = errors,
            Warnings = warnings,
        };
}
