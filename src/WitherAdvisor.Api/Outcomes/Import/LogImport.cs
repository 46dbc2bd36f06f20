using System.Text;
using WitherAdvisor.Api.Http;
using WitherAdvisor.Fields;
using WitherAdvisor.Loft.Kept.Outcomes;
using WitherAdvisor.Loft.Kept.Sites;
using WitherAdvisor.Loft;
using WitherAdvisor.Outcomes;

namespace WitherAdvisor.Api.Outcomes.Import;

/// <summary>Imports a log of past withers, or says what would come of it. One transaction: all that is kept is kept at once.</summary>
internal sealed class LogImport(ISiteStore sites, IOutcomeStore outcomes, TimeProvider clock)
{
    public async Task<Imported> Run(string siteId, Stream csv, ImportQuery asked, CancellationToken cancel)
    {
        if (await sites.FindSite(siteId, cancel) is not { } site)
        {
            return Imported.Refuse(Problem.Unknown("site", siteId));
        }

        IReadOnlyList<StoredTrough> troughs = await sites.ListTroughs(siteId, cancel);
        IReadOnlyList<TasterScale> scales = await outcomes.ListScales(siteId, cancel);
        bool takes = asked.Mode == ImportMode.Take;
        ImportRun run = new(site, troughs, scales, asked.Odd ?? OddRows.Ask, takes, clock.NowInMilliseconds());
        try
        {
            using LogFile file = new(csv);
            IReadOnlyList<FieldError> wrong = file.ReadHeader(out string[] header);
            if (wrong.Count > 0)
            {
                return Imported.Refuse(Problem.InvalidInput([.. wrong]));
            }

            return takes
                ? await Take(siteId, run, file, header, asked.Keep ?? KeepRows.AllOrNone, cancel)
                : await Preview(siteId, run, file, header, cancel);
        }
        catch (DecoderFallbackException)
        {
            return Imported.Refuse(Problem.Malformed("The body is not UTF-8."));
        }
    }

    private async Task<Imported> Preview(string siteId, ImportRun run, LogFile file, string[] header, CancellationToken cancel)
    {
        await outcomes.Preview(siteId, kept => run.Over(file, header, kept), cancel);
        return new(run.Tally.ToAnswer(kept: false), null);
    }

    private async Task<Imported> Take(
        string siteId, ImportRun run, LogFile file, string[] header, KeepRows keep, CancellationToken cancel)
    {
        bool kept = await outcomes.Import(
            siteId,
            import =>
            {
                run.Over(file, header, import);
                return keep == KeepRows.GoodRows || run.Tally.AllFit;
            },
            cancel);
        return kept ? new(run.Tally.ToAnswer(run.Tally.AddsAny), null) : Imported.Refuse(NothingKept(run.Tally));
    }

    private static ProblemResult NothingKept(ImportTally tally)
    {
        List<FieldError> errors = [.. tally.Unfit.SelectMany(row => row.Errors.Select(error => error.At($"line {row.Line}, column {error.Field}")))];
        List<ProblemWarning> odd =
            [.. tally.Unfit.SelectMany(row => row.Warnings.Select(warning => warning with { Field = $"line {row.Line}, {warning.Field}" })).Take(Problem.MostErrorsShown)];
        return errors.Count == 0 ? Problem.Unusual(odd) : Problem.InvalidInput(errors, odd);
    }
}
