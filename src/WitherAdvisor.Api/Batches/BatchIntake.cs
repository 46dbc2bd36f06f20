using WitherAdvisor.Api.Advice;
using WitherAdvisor.Api.Hosting;
using WitherAdvisor.Fields;
using WitherAdvisor.Loft;
using WitherAdvisor.Loft.Kept.Batches;
using WitherAdvisor.Loft.Kept.Sites;

namespace WitherAdvisor.Api.Batches;

/// <summary>Takes in a batch: keeps it with its first advice, and warns where lots would mix.</summary>
internal sealed class BatchIntake(ISiteStore sites, IBatchStore batches, AdviceKeeping keeping, TimeProvider clock)
{
    public async Task<IntakeOutcome> Take(string siteId, BatchOnTroughInput input, CancellationToken cancel)
    {
        if (await sites.FindSite(siteId, cancel) is not { } site)
        {
            return new IntakeOutcome.UnknownSite();
        }

        if (await sites.FindTrough(siteId, input.Trough, cancel) is not { } trough)
        {
            return new IntakeOutcome.UnknownTrough();
        }

        List<FieldError> errors = [.. LoadLimit.Check(input.GreenWeightKg, trough.Trough, "green_weight_kg")];
        return errors.Count > 0
            ? new IntakeOutcome.Refused(errors)
            : await Keep(site, trough, input, cancel);
    }

    private async Task<IntakeOutcome> Keep(
        StoredSite site, StoredTrough trough, BatchOnTroughInput input, CancellationToken cancel)
    {
        DateTimeOffset now = clock.NowInMilliseconds();
        StoredBatch batch = new(AdviceKeeping.NewId(now), site.Id, trough.Id, BatchMapping.ToKept(input), now);
        IReadOnlyList<StoredBatch> lying = await batches.OnTrough(site.Id, trough.Id, input.LoadedAt, cancel);
        StoredAdvice advice = await keeping.Make(site, trough, batch, cancel);
        await batches.Add(batch, advice, cancel);
        return new IntakeOutcome.Taken(batch, LotKeeping.Warnings(batch, lying, trough), advice);
    }
}
