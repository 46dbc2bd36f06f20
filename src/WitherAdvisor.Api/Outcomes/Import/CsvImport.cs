using System.Text;
using WitherAdvisor.Api.Http;
using WitherAdvisor.Fields;
using WitherAdvisor.Loft;
using WitherAdvisor.Loft.Importing;
using WitherAdvisor.Loft.Kept.Sites;
using WitherAdvisor.LogFiles.Reading;
using WitherAdvisor.Words.Units;

namespace WitherAdvisor.Api.Outcomes.Import;

/// <summary>Imports a log that came as CSV, and tells of it as requests and pages are answered.</summary>
internal sealed class CsvImport(ISiteStore sites, LogImport import, TimeProvider time)
{
    private static readonly RowRules Rules = new();

    /// <summary>Its rows are told in the words of whoever asks.</summary>
    public async Task<Imported> Run(string siteId, Stream csv, ImportQuery asked, RowWording told, CancellationToken cancel)
    {
        if (await sites.FindSite(siteId, cancel) is not { } site)
        {
            return Imported.Refuse(Problem.Unknown("site", siteId));
        }

        try
        {
            using LogFile file = new(csv);
            IReadOnlyList<FieldError> wrong = file.ReadHeader(out string[] header);
            return wrong.Count > 0 ? Imported.Refuse(Problem.InvalidInput([.. wrong])) : await Run(site, file, header, asked, told, cancel);
        }
        catch (DecoderFallbackException)
        {
            return Imported.Refuse(Problem.Malformed("The body is not UTF-8."));
        }
    }

    private async Task<Imported> Run(
        StoredSite site, LogFile file, string[] header, ImportQuery asked, RowWording told, CancellationToken cancel)
    {
        WallClock clock = new(site.TimeZone, told.Words);
        IEnumerable<ReadLine> lines = new LineReading(site, Rules, clock.Read, time.NowInMilliseconds()).Over(file, header);
        OddRows odd = asked.Odd ?? OddRows.Ask;
        return ImportMapping.ToResponse(
            asked.Mode == ImportMode.Take
                ? await import.Take(site, lines, odd, asked.Keep ?? KeepRows.AllOrNone, cancel)
                : await import.Preview(site, lines, odd, cancel),
            clock, told);
    }
}
