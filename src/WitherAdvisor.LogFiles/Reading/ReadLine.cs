using WitherAdvisor.Fields;
using WitherAdvisor.LogFiles.Columns;
using WitherAdvisor.LogFiles.Writing;
using WitherAdvisor.Loft.Importing;
using WitherAdvisor.Loft.Kept.Outcomes;

namespace WitherAdvisor.LogFiles.Reading;

/// <summary>A line of a log file, read.</summary>
/// <param name="Line">That it begins on; the header is line 1.</param>
/// <param name="Cells">Null where a cell does not fit.</param>
/// <param name="Read">What it tells; null as well then.</param>
/// <param name="Errors">What of it does not fit by itself, by column.</param>
/// <param name="Given">Columns in which it says anything.</param>
/// <param name="Writing">How the same would be written.</param>
internal sealed record ReadLine(
    int Line, LogRow? Cells, LoggedOutcome? Read, IReadOnlyList<FieldError> Errors, IReadOnlyList<LogColumn> Given, LogWriting Writing) : ILogLine
{
    public bool Fits => Errors.Count == 0;

    public string? SiteId => Cells?.Site;

    public bool NamesItsBatch => Cells?.BatchId is not null;

    /// <summary>Values are the same where they are written the same.</summary>
    public IReadOnlyList<ColumnDifference> Differences(LoggedOutcome kept, bool hasOutcome)
    {
        LogRow there = Writing.Row(kept);
        LogRow said = Writing.Row(Read!);
        return
        [
            .. Given
                .Where(column => !column.Meaning.Follows && (hasOutcome || column.Meaning.Part == LogPart.Batch || column.Name == "unloaded_at"))
                .Select(column => new ColumnDifference(column.Name, LogCell.Write(column, said), LogCell.Write(column, there)))
                .Where(difference => difference.Said != difference.Kept),
        ];
    }
}
