using WitherAdvisor.Fields;
using WitherAdvisor.LogFiles.Columns;
using WitherAdvisor.LogFiles.Writing;
using WitherAdvisor.Loft.Kept.Outcomes;
using WitherAdvisor.Loft.Kept.Sites;
using WitherAdvisor.Loft.Sites;

namespace WitherAdvisor.LogFiles.Reading;

/// <summary>Reads the lines of a log of one site.</summary>
/// <param name="rules">What a batch and an outcome keep to by themselves.</param>
/// <param name="local">The instant of a date and a time on the site's wall clock; null where they are none.</param>
internal sealed class LineReading(StoredSite site, IRowRules rules, Func<string, string, DateTimeOffset?> local, DateTimeOffset now)
{
    private readonly LogWriting writing = new(new SiteClock(site.TimeZone));
    private readonly LogReading reading = new(site.Id, rules, now);

    /// <summary>One after the other, each as it is asked for.</summary>
    /// <param name="file">Its header has been read.</param>
    /// <exception cref="System.Text.DecoderFallbackException">Not UTF-8.</exception>
    public IEnumerable<ReadLine> Over(LogFile file, string[] header)
    {
        LogCells cells = new(header, local);
        foreach ((int line, string[] row) in file.Rows())
        {
            List<FieldError> errors = [];
            LogRow? known = cells.Read(row, errors);
            LoggedOutcome? read = known is null ? null : reading.Read(known, errors);
            yield return new(line, known, read, errors, known is null ? [] : [.. cells.Given(row)], writing);
        }
    }
}
